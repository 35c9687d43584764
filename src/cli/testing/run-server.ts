import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

const COMMAND = fileURLToPath(new URL("../../../bin/wareboard.mjs", import.meta.url));

/** The built `wareboard serve`, in a process of its own. */
export interface ServerProcess {
  readonly address: string;
  readonly child: ChildProcess;
  /** Sends a signal and waits for the end. Gives the exit code, or the signal that ended it. */
  readonly end: (signal: NodeJS.Signals) => Promise<number | string>;
}

/** Starts a server on a free port and waits until it says its address. */
export async function startServer(dataFolder: string, ...more: string[]): Promise<ServerProcess> {
  const words = [COMMAND, "serve", "--json", "--no-open", "--port", "0", "--data", dataFolder, ...more];
  const child = spawn(process.execPath, words, { stdio: ["ignore", "pipe", "pipe"] });
  let complaint = "";
  child.stderr.on("data", (data) => {
    complaint += data;
  });
  const line = await new Promise<string>((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (data) => {
      said += data;
      if (said.includes("\n")) resolve(said);
    });
    child.once("exit", () => reject(new Error(complaint)));
  });
  return {
    address: (JSON.parse(line) as { address: string }).address,
    child,
    end: async (signal) => {
      const gone = once(child, "exit");
      child.kill(signal);
      const [code, by] = await gone;
      return code ?? by;
    },
  };
}
