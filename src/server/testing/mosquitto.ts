import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";

/** An MQTT broker of the tests' own. */
export interface TestBroker {
  readonly url: string;
  start(): Promise<void>;
  /** Ends it, as a broken network or a restart would. */
  stop(): Promise<void>;
}

/**
 * A real broker, mosquitto, on a port of this machine alone; not yet started. Where it is missing, root installs it with
 * apt-get.
 *
 * @returns the broker, or in a sentence why there is none
 * @throws Error in CI, where a broker is not optional
 */
export async function testBroker(): Promise<TestBroker | string> {
  const program = findProgram() ?? installProgram();
  if (typeof program === "string") {
    if (process.env.CI) throw new Error(`Readings by MQTT must be tested with a broker in CI: ${program}`);
    return program;
  }
  const port = await freePort();
  const folder = mkdtempSync(join(tmpdir(), "studio-mqtt-"));
  const file = join(folder, "broker.conf");
  // As root it would become another user, who may not read this folder.
  writeFileSync(file, `listener ${port} 127.0.0.1\nallow_anonymous true\nuser root\nset_tcp_nodelay true\n`);
  let broker: ChildProcess | null = null;
  const endWithUs = () => {
    broker?.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  };
  process.once("exit", endWithUs);
  return {
    url: `mqtt://127.0.0.1:${port}`,
    start: async () => {
      broker = spawn(program.path, ["-c", file], { stdio: "ignore" });
      await answering(port);
    },
    stop: async () => {
      const ending = broker;
      broker = null;
      if (ending === null || ending.exitCode !== null) return;
      await new Promise((resolve) => {
        ending.once("exit", resolve);
        ending.kill("SIGKILL");
      });
    },
  };
}

function findProgram(): { path: string } | null {
  const folders = ["/usr/sbin", ...(process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "")];
  const path = folders.map((folder) => join(folder, "mosquitto")).find((each) => existsSync(each));
  return path === undefined ? null : { path };
}

function installProgram(): { path: string } | string {
  const missing = "there is no mosquitto here";
  if (process.getuid?.() !== 0) return `${missing}, and only root can install it`;
  if (spawnSync("apt-get", ["--version"]).status !== 0) return `${missing}, and no apt-get to install it with`;
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  // apt-get lets only one in: test files that run at once wait for each other, and then find it done.
  const install = "apt-get -q -y update; apt-get -q -y install --no-install-recommends mosquitto";
  const lock = join(tmpdir(), "studio-postgres-install.lock");
  const done = spawnSync("flock", [lock, "sh", "-c", install], { env, encoding: "utf8" });
  return findProgram() ?? `${missing}, and apt-get could not install it: ${done.stderr}`;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

async function answering(port: number): Promise<void> {
  for (let tries = 0; tries < 200; tries++) {
    const answers = await new Promise((resolve) => {
      const line = connect(port, "127.0.0.1", () => {
        line.destroy();
        resolve(true);
      }).once("error", () => resolve(false));
    });
    if (answers) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("mosquitto did not start.");
}
