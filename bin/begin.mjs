// What `npm start`, `npm test` and `npm run bench` do: bring what is missing (Node 24, the packages), build, then run.

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { goOnUnderNode, packageRoot, runUnderNode } from "./runtime.mjs";

const modules = join(packageRoot, "node_modules");
const stamp = join(modules, ".wareboard-lock");

/** Installs the locked packages when they are missing or the lock file has changed since. */
function bringPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(packageRoot, "package-lock.json")))
    .digest("hex");
  const installed = existsSync(stamp) ? readFileSync(stamp, "utf8") : "";
  if (installed === lock) return;
  process.stderr.write("Installing the packages Wareboard is built from …\n");
  const done = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: packageRoot,
    stdio: ["ignore", "ignore", "inherit"],
    shell: process.platform === "win32",
  });
  if (done.status !== 0) throw new Error("npm could not install the packages; see its message above.");
  writeFileSync(stamp, lock);
}

/** Puts `wareboard` where `npx wareboard` looks first in a checkout. */
function linkCommand() {
  const link = join(modules, ".bin", "wareboard");
  const command = join(packageRoot, "bin/wareboard.mjs");
  if (process.platform === "win32" || existsSync(link)) return;
  mkdirSync(join(modules, ".bin"), { recursive: true });
  rmSync(link, { force: true });
  symlinkSync("../../bin/wareboard.mjs", link);
  chmodSync(command, 0o755);
}

const node = (args) => runUnderNode(args, { cwd: packageRoot });
const tool = (name, ...args) => node([join(modules, name), ...args]);
const build = () => tool("typescript/bin/tsc", "-b") || tool("vite/bin/vite.js", "build", "--logLevel", "warn");

/** Opens the studio, or whatever other command is named; goes on as it, so that Ctrl-C stops that one in its own way. */
function start(args) {
  process.stderr.write("Building Wareboard …\n");
  const failed = build();
  if (failed) return failed;
  const command = args[0] === undefined || args[0].startsWith("-") ? ["serve", ...args] : args;
  return goOnUnderNode([join(packageRoot, "bin/wareboard.mjs"), ...command]);
}

const tasks = {
  start,
  test: (args) =>
    build() ||
    tool("@biomejs/biome/bin/biome", "check", "--error-on-warnings") ||
    tool("dependency-cruiser/bin/dependency-cruiser.mjs", "--config", ".dependency-cruiser.mjs", "src") ||
    tool("vitest/vitest.mjs", "run", ...args),
  bench: (args) => build() || node(["benchmarks/run.ts", ...args]),
  pictures: (args) => build() || node(["src/web/testing/take-pictures.ts", ...args]),
  build: () => build(),
  schemas: () => build() || node(["dist/cli/publish-schemas.js"]),
};

const [name = "start", ...args] = process.argv.slice(2);
const task = tasks[name];
if (!task) throw new Error(`No task called "${name}". There are: ${Object.keys(tasks).join(", ")}.`);
bringPackages();
linkCommand();
process.exitCode = task(args);
