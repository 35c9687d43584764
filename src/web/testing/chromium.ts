import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

// A fresh browser that asks nobody for anything: no sandbox because root may not have one, no graphics card.
const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // WebGL drawn by the processor, for the view in space.
  "--enable-unsafe-swiftshader",
];

/**
 * Starts Chromium for the tests. Where it is missing, root installs it with apt-get.
 *
 * @returns the browser, or in a sentence why there is none
 * @throws Error in CI, where a browser is not optional
 */
export async function startChromium(): Promise<Browser | string> {
  const program = findChromium() ?? installChromium();
  if (typeof program !== "string") {
    return chromium.launch({ executablePath: program.path, args: FLAGS });
  }
  if (process.env.CI) throw new Error(`The application must be tested in a browser in CI: ${program}`);
  return program;
}

function findChromium(): { path: string } | null {
  const folders = ["/usr/bin", ...(process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "")];
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
  const path = folders.flatMap((folder) => names.map((name) => join(folder, name))).find((each) => existsSync(each));
  return path === undefined ? null : { path };
}

function installChromium(): { path: string } | string {
  const missing = "there is no Chromium here";
  if (process.getuid?.() !== 0) return `${missing}, and only root can install it`;
  if (spawnSync("apt-get", ["--version"]).status !== 0) return `${missing}, and no apt-get to install it with`;
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  // apt-get lets only one in: test files that run at once wait for each other, and then find it done.
  const install = "apt-get -q -y update; apt-get -q -y install --no-install-recommends chromium";
  const lock = join(tmpdir(), "studio-postgres-install.lock");
  const done = spawnSync("flock", [lock, "sh", "-c", install], { env, encoding: "utf8" });
  return findChromium() ?? `${missing}, and apt-get could not install it: ${done.stderr}`;
}
