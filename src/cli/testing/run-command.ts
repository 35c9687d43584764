import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const COMMAND = fileURLToPath(new URL("../../../bin/wareboard.mjs", import.meta.url));

/** Runs the built command as a person would and gives what it printed and its exit code. */
export function runCommand(
  args: readonly string[],
  folder?: string,
): { code: number | null; out: string; err: string } {
  const done = spawnSync(process.execPath, [COMMAND, ...args], {
    encoding: "utf8",
    ...(folder === undefined ? {} : { cwd: folder }),
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}
