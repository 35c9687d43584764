import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** A studio served from a folder of its own, as `wareboard serve` serves hers. */
export interface ServedStudio {
  readonly address: string;
  /** Where a phone on the home network finds it; none unless it is served there. */
  readonly homeAddresses: readonly string[];
  readonly dataFolder: string;
  /** Stops it as Ctrl-C would. */
  stop(): Promise<void>;
  /** Ends it as a power cut would. */
  kill(): Promise<void>;
  /** Serves the same folder again, at the same address. */
  again(): Promise<void>;
  /** Stops it and takes its folder away. */
  end(): Promise<void>;
}

const COMMAND = fileURLToPath(new URL("../../../bin/wareboard.mjs", import.meta.url));

/**
 * Serves an empty studio; `npm test` has built it by then.
 *
 * @param passphrase serves it on the home network too, and asks everybody for this
 */
export async function serveStudio(passphrase: string | null = null): Promise<ServedStudio> {
  const dataFolder = mkdtempSync(join(tmpdir(), "wareboard-journey-"));
  let [server, { address, homeAddresses }] = await started(dataFolder, 0, passphrase);
  const port = Number(new URL(address).port);
  const stopped = async (signal: NodeJS.Signals): Promise<void> => {
    if (server.exitCode !== null || server.signalCode !== null) return;
    const gone = once(server, "exit");
    server.kill(signal);
    await gone;
  };
  return {
    address,
    homeAddresses,
    dataFolder,
    stop: () => stopped("SIGTERM"),
    kill: () => stopped("SIGKILL"),
    again: async () => {
      [server, { address, homeAddresses }] = await started(dataFolder, port, passphrase);
    },
    end: async () => {
      await stopped("SIGTERM");
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}

/** What the server says of itself once it listens. */
interface Said {
  readonly address: string;
  readonly homeAddresses: readonly string[];
}

async function started(dataFolder: string, port: number, passphrase: string | null): Promise<[ChildProcess, Said]> {
  const words = [COMMAND, "serve", "--json", "--no-open", "--port", String(port), "--data", dataFolder];
  if (passphrase !== null) words.push("--home-network");
  const env = { ...process.env, ...(passphrase === null ? {} : { WAREBOARD_PASSPHRASE: passphrase }) };
  const server = spawn(process.execPath, words, { stdio: ["ignore", "pipe", "pipe"], env });
  let said = "";
  server.stderr.on("data", (data: Buffer) => {
    said = (said + data.toString()).slice(-4000);
  });
  const line = await new Promise<string>((resolve, reject) => {
    let out = "";
    server.stdout.on("data", (data: Buffer) => {
      out += data.toString();
      if (out.includes("\n")) resolve(out);
    });
    server.once("exit", () => reject(new Error(`The studio could not be served: ${said}`)));
  });
  return [server, JSON.parse(line) as Said];
}

/** Begins a served studio with the demo. */
export async function beginWithDemo(address: string): Promise<void> {
  const answer = await fetch(`${address}/api/begin`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ with: "demo" }),
  });
  if (!answer.ok) throw new Error(`The demo was refused: ${await answer.text()}`);
}
