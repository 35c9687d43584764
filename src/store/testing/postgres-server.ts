import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import pg from "pg";

/** A PostgreSQL server of the tests' own, gone when they are. */
export interface TestServer {
  /** The connection string of an empty database's schema, made for the asking. */
  emptyPlace(): Promise<string>;
  stop(): Promise<void>;
}

const OLDEST = 15;
const PROGRAMS_PLACE = "/usr/lib/postgresql";

/**
 * Starts a PostgreSQL server in a temporary folder, reached through a socket there and nowhere else. PostgreSQL refuses
 * to run as root, so that root starts it as the user `postgres`; where it is missing, root installs it with apt-get.
 *
 * @returns the server, or in a sentence why there is none
 * @throws Error in CI, where a server is not optional
 */
export async function startPostgres(): Promise<TestServer | string> {
  const programs = findPrograms() ?? installPrograms();
  if (typeof programs === "string") return excuse(programs);
  const user = isRoot() ? userNumbers("postgres") : OURSELVES;
  if (typeof user === "string") return excuse(user);
  const folder = mkdtempSync(join(tmpdir(), "studio-pg-"));
  if (user.uid !== undefined) chownSync(folder, user.uid, user.gid ?? user.uid);
  const data = join(folder, "data");
  const made = spawnSync(
    join(programs.folder, "initdb"),
    ["--pgdata", data, "--username=studio", "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync"],
    { ...user, cwd: folder, encoding: "utf8" },
  );
  if (made.status !== 0) throw new Error(`initdb failed: ${made.stderr}${made.error?.message ?? ""}`);
  const server = spawn(
    join(programs.folder, "postgres"),
    // What the tests ask is what is kept and refused, not what a power cut does to it; hence fsync off, for speed.
    ["-D", data, "-k", folder, "-c", "listen_addresses=", "-c", "fsync=off", "-c", "max_connections=40"],
    { ...user, cwd: folder, stdio: ["ignore", "ignore", "pipe"] },
  );
  const endWithUs = () => {
    server.kill("SIGQUIT");
    rmSync(folder, { recursive: true, force: true });
  };
  process.once("exit", endWithUs);
  const stop = async () => {
    process.removeListener("exit", endWithUs);
    await ended(server, "SIGINT");
    rmSync(folder, { recursive: true, force: true });
  };
  const connection = `postgres://studio@/postgres?host=${encodeURIComponent(folder)}`;
  await answering(server, connection).catch(async (error: unknown) => {
    await stop();
    throw error;
  });
  return { emptyPlace: () => emptySchema(connection), stop };
}

function excuse(why: string): string {
  if (process.env.CI) throw new Error(`The store must be tested on PostgreSQL in CI: ${why}`);
  return why;
}

const isRoot = (): boolean => process.getuid?.() === 0;

function findPrograms(): { folder: string } | null {
  const versions = existsSync(PROGRAMS_PLACE) ? readdirSync(PROGRAMS_PLACE) : [];
  versions.sort((a, b) => Number(b) - Number(a));
  const onPath = (process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const folders = [...versions.map((version) => join(PROGRAMS_PLACE, version, "bin")), ...onPath];
  const folder = folders.find((each) => {
    if (!existsSync(join(each, "initdb")) || !existsSync(join(each, "postgres"))) return false;
    const said = spawnSync(join(each, "postgres"), ["--version"], { encoding: "utf8" }).stdout ?? "";
    return Number(/(\d+)/.exec(said)?.[1] ?? 0) >= OLDEST;
  });
  return folder === undefined ? null : { folder };
}

function installPrograms(): { folder: string } | string {
  const missing = `there is no PostgreSQL ${OLDEST} or later here`;
  if (!isRoot()) return `${missing}, and only root can install it`;
  if (spawnSync("apt-get", ["--version"]).status !== 0) return `${missing}, and no apt-get to install it with`;
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  // Test files run at once, and apt-get lets only one in: the others wait, and then find it done.
  const install = "apt-get -q -y update; apt-get -q -y install --no-install-recommends postgresql";
  const lock = join(tmpdir(), "studio-postgres-install.lock");
  const done = spawnSync("flock", [lock, "sh", "-c", install], { env, encoding: "utf8" });
  return findPrograms() ?? `${missing}, and apt-get could not install it: ${done.stderr}`;
}

interface UserNumbers {
  readonly uid?: number;
  readonly gid?: number;
}
const OURSELVES: UserNumbers = {};

function userNumbers(name: string): UserNumbers | string {
  const line = readFileSync("/etc/passwd", "utf8")
    .split("\n")
    .find((each) => each.startsWith(`${name}:`));
  const [, , uid, gid] = line?.split(":") ?? [];
  return uid && gid ? { uid: Number(uid), gid: Number(gid) } : `there is no user "${name}" to run PostgreSQL as`;
}

async function answering(server: ChildProcess, connectionString: string): Promise<void> {
  let said = "";
  server.stderr?.on("data", (data: Buffer) => {
    said = (said + data.toString()).slice(-2000);
  });
  for (let tries = 0; tries < 300; tries++) {
    if (server.exitCode !== null) break;
    const client = new pg.Client({ connectionString });
    try {
      await client.connect();
      await client.end();
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
  throw new Error(`PostgreSQL did not start: ${said}`);
}

let schemas = 0;

async function emptySchema(connectionString: string): Promise<string> {
  const schema = `studio_${++schemas}`;
  const client = new pg.Client({ connectionString });
  await client.connect();
  await client.query(`create schema ${schema}`);
  await client.end();
  return `${connectionString}&options=${encodeURIComponent(`-c search_path=${schema}`)}`;
}

const ended = (server: ChildProcess, signal: NodeJS.Signals): Promise<void> =>
  new Promise((resolve) => {
    if (server.exitCode !== null || server.signalCode !== null) return resolve();
    server.once("exit", () => resolve());
    server.kill(signal);
  });
