import { once } from "node:events";
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { runCommand } from "./testing/run-command.ts";
import { startServer } from "./testing/run-server.ts";

const folder = mkdtempSync(join(tmpdir(), "wareboard-serve-"));
const data = (name: string): string => join(folder, name);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a studio is served until Ctrl-C, which it takes as one wish however often it arrives at once", async () => {
  const server = await startServer(data("studio"));
  const events = await fetch(`${server.address}/api/events`);
  expect((await fetch(`${server.address}/api/studio`)).status).toBe(200);
  server.child.kill("SIGINT");
  expect(await server.end("SIGINT")).toBe(0);
  // A browser that listened is let go.
  await events.text();
  expect(readdirSync(data("studio")).sort()).toEqual(["arriving", "backups", "server-key", "studio.sqlite"]);
});

test("what is kept is hers alone to read", async () => {
  const server = await startServer(data("hers"));
  await server.end("SIGTERM");
  const mode = (path: string): number => statSync(join(data("hers"), path)).mode & 0o777;
  expect([mode("."), mode("studio.sqlite"), mode("server-key"), mode("backups")]).toEqual([0o700, 0o600, 0o600, 0o700]);
});

test("a port in use is said so, with what to do", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await once(other, "listening");
  const { port } = other.address() as { port: number };
  const done = runCommand(["serve", "--json", "--no-open", "--data", data("taken"), "--port", String(port)]);
  other.close();
  expect(done.code).toBe(2);
  const { error } = JSON.parse(done.err);
  expect([error.code, error.message]).toEqual(["port-taken", expect.stringContaining(`--port ${port + 1}`)]);
});

test("the home network gets in by a passphrase of twelve characters or not at all", async () => {
  const serve = ["serve", "--json", "--no-open", "--home-network", "--port", "0", "--data", data("home")];
  const none = runCommand(serve);
  expect([none.code, JSON.parse(none.err).error.code]).toEqual([2, "missing-option"]);
  writeFileSync(data("short.txt"), "eleven char\n");
  const short = runCommand([...serve, "--passphrase-file", data("short.txt")]);
  expect([short.code, JSON.parse(short.err).error.code]).toEqual([2, "wrong-passphrase-length"]);

  writeFileSync(data("long.txt"), "four words of clay\n");
  const server = await startServer(data("home"), "--home-network", "--passphrase-file", data("long.txt"));
  expect((await fetch(`${server.address}/api/ware`)).status).toBe(401);
  const given = await fetch(`${server.address}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ passphrase: "four words of clay" }),
  });
  const cookie = String(given.headers.get("set-cookie")).split(";", 1)[0] as string;
  expect((await fetch(`${server.address}/api/ware`, { headers: { cookie } })).status).toBe(200);
  expect(await server.end("SIGTERM")).toBe(0);
});

test("a store that is no PostgreSQL and half a certificate are refused", async () => {
  for (const more of [
    ["--store", "mysql://x"],
    ["--certificate", "x.pem"],
  ]) {
    const done = runCommand(["serve", "--json", "--no-open", "--port", "0", "--data", data("odd"), ...more]);
    expect([more[0], done.code]).toEqual([more[0], 2]);
  }
});
