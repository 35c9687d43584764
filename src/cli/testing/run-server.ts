import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

const COMMAND = fileURLToPath(new URL("../../../bin/wareboard.mjs", import.meta.url));

/** A built command that goes on until it is told to stop, and what it said first. */
export interface RunningCommand<Said> {
  readonly child: ChildProcess;
  readonly said: Said;
  /** Sends a signal and waits for the end, where it has not come yet. Gives the exit code, or the signal that ended it. */
  readonly end: (signal: NodeJS.Signals) => Promise<number | string>;
}

/**
 * Starts a command and waits for its first line, which is JSON.
 *
 * @throws Error with what it complained of, where it ends before that
 */
export async function startCommand<Said>(
  words: readonly string[],
  env: NodeJS.ProcessEnv = process.env,
): Promise<RunningCommand<Said>> {
  const child = spawn(process.execPath, [COMMAND, ...words], { stdio: ["ignore", "pipe", "pipe"], env });
  let complaint = "";
  child.stderr.on("data", (data: Buffer) => {
    complaint = (complaint + data.toString()).slice(-4000);
  });
  const line = await new Promise<string>((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (data: Buffer) => {
      said += data.toString();
      if (said.includes("\n")) resolve(said);
    });
    child.once("exit", () => reject(new Error(`wareboard ${words[0]} did not start: ${complaint}`)));
  });
  return {
    child,
    said: JSON.parse(line) as Said,
    end: async (signal) => {
      if (child.exitCode === null && child.signalCode === null) {
        const gone = once(child, "exit");
        child.kill(signal);
        await gone;
      }
      return child.exitCode ?? child.signalCode ?? signal;
    },
  };
}

/** What a server says of itself once it listens. */
export interface ServerSaid {
  readonly address: string;
  readonly homeAddresses: readonly string[];
}

/** The built `wareboard serve`, in a process of its own. */
export interface ServerProcess extends RunningCommand<ServerSaid> {
  readonly address: string;
}

/** Starts a server on a free port and waits until it says its address. */
export async function startServer(dataFolder: string, ...more: string[]): Promise<ServerProcess> {
  const words = ["serve", "--json", "--no-open", "--port", "0", "--data", dataFolder, ...more];
  const running = await startCommand<ServerSaid>(words);
  return { ...running, address: running.said.address };
}
