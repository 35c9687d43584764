import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { listBackups } from "../../store/backups.ts";
import { openSqliteStore } from "../../store/sqlite-store.ts";
import { note } from "../../store/testing/sample-records.ts";
import { TEST_CERTIFICATE, TEST_CERTIFICATE_KEY } from "../testing/certificate.ts";
import { certificateHosts } from "./certificate.ts";
import { backUpIfDue } from "./daily-backup.ts";
import { backupFolder, prepareDataFolder, serverKey, storeFile, usualDataFolder } from "./data-folder.ts";
import { canOpenBrowser } from "./open-browser.ts";
import { homeNetworkAddresses, ownHosts } from "./own-addresses.ts";
import { runServer } from "./run-server.ts";

const folder = mkdtempSync(join(tmpdir(), "studio-running-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const wish = (name: string) => ({
  port: 0,
  dataFolder: join(folder, name),
  storePlace: null,
  homeNetwork: false,
  passphrase: null,
  certificate: null,
  complain: (error: Error) => {
    throw error;
  },
});

test("with a certificate the connection is encrypted, and the cookie travels no other way", async () => {
  const certificate = { cert: TEST_CERTIFICATE, key: TEST_CERTIFICATE_KEY };
  const server = await runServer({ ...wish("https"), certificate, passphrase: "four words of clay" });
  expect(server.address).toMatch(/^https:\/\/localhost:\d+$/);
  const cookie = await new Promise((resolve, reject) => {
    const asked = request(
      `${server.address}/api/session`,
      { method: "POST", ca: TEST_CERTIFICATE, headers: { "content-type": "application/json" }, agent: false },
      (answer) => resolve(answer.resume().headers["set-cookie"]?.[0]),
    );
    asked.on("error", reject).end(JSON.stringify({ passphrase: "four words of clay" }));
  });
  expect(cookie).toMatch(/; Secure/);
  await server.stop();
});

test("a certificate that is none, or not of its key, is refused; the names of one are answered to", async () => {
  const odd = { cert: TEST_CERTIFICATE, key: TEST_CERTIFICATE };
  await expect(runServer({ ...wish("odd"), certificate: odd })).rejects.toMatchObject({ code: "wrong-certificate" });
  expect(certificateHosts({ cert: TEST_CERTIFICATE, key: TEST_CERTIFICATE_KEY })).toEqual(["localhost"]);
});

test("what was kept is there after a stop and a start, and its backup too", async () => {
  const first = await runServer(wish("again"));
  const answer = await fetch(`${first.address}/api/commands/add-note`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ key: "k", input: { id: "n1", aboutKind: null, aboutId: null, text: "a word" } }),
  });
  expect(answer.status).toBe(200);
  await first.stop();
  expect(listBackups(backupFolder(join(folder, "again")))).toEqual([]);
  const second = await runServer(wish("again"));
  expect(await (await fetch(`${second.address}/api/notes/n1`)).json()).toMatchObject({ text: "a word" });
  await second.stop();
  expect(listBackups(backupFolder(join(folder, "again")))).toHaveLength(1);
});

test("a backup is due where the newest is older than a day, and never of an empty studio", async () => {
  const data = join(folder, "backups");
  prepareDataFolder(data);
  const store = await openSqliteStore(storeFile(data));
  const dueAt = (now: string) => backUpIfDue(store, storeFile(data), data, now);
  expect(await dueAt("2026-11-25T09:00:00.000Z")).toBeNull();
  await store.write((records) => records.notes.add(note()));
  expect(await dueAt("2026-11-25T09:00:00.000Z")).not.toBeNull();
  expect(await dueAt("2026-11-26T08:59:59.999Z")).toBeNull();
  expect(await dueAt("2026-11-26T09:00:00.000Z")).not.toBeNull();
  await store.close();
});

describe("where a studio is kept", () => {
  test("where the system keeps data, or in her own folder", () => {
    expect(usualDataFolder({ XDG_DATA_HOME: "/data" })).toBe("/data/wareboard-studio");
    // A relative path there is to be ignored (freedesktop.org Base Directory Specification, "Basics").
    expect(usualDataFolder({ XDG_DATA_HOME: "data" })).toBe(usualDataFolder({}));
    expect(usualDataFolder({})).toMatch(/wareboard-studio$/);
  });

  test("the key is made once; a spoilt one is told of, not replaced", () => {
    const data = join(folder, "key");
    prepareDataFolder(data);
    expect(serverKey(data)).toEqual(serverKey(data));
    writeFileSync(join(data, "server-key"), "short");
    expect(() => serverKey(data)).toThrow(expect.objectContaining({ code: "spoilt-key" }));
  });

  test("a place that is no folder is refused in words", () => {
    writeFileSync(join(folder, "file"), "");
    expect(() => prepareDataFolder(join(folder, "file", "studio"))).toThrow(
      expect.objectContaining({ code: "no-data-folder" }),
    );
  });
});

describe("this machine", () => {
  const address = (ip: string, family: "IPv4" | "IPv6", internal = false) =>
    ({ address: ip, family, internal, netmask: "", mac: "", cidr: null, scopeid: 0 }) as const;
  // Addresses for documentation: RFC 5737, RFC 3849.
  const interfaces = {
    lo: [address("127.0.0.1", "IPv4", true)],
    tunnel: [address("203.0.113.5", "IPv4")],
    wifi: [address("192.168.1.20", "IPv4"), address("2001:db8::20", "IPv6")],
  };

  test("is reached from the home network by its private address first", () => {
    expect(homeNetworkAddresses(interfaces)).toEqual(["192.168.1.20", "203.0.113.5"]);
  });

  test("answers to its names and addresses as they stand in a Host header", () => {
    expect(ownHosts(interfaces, "Kiln-Shed")).toEqual([
      "kiln-shed",
      "kiln-shed.local",
      "203.0.113.5",
      "192.168.1.20",
      "[2001:db8::20]",
    ]);
    expect(ownHosts(interfaces, "odd name")).not.toContain("odd name");
  });

  test("opens a browser where there is a screen and nobody minds", () => {
    expect(canOpenBrowser({}, "linux")).toBe(false);
    expect(canOpenBrowser({ DISPLAY: ":0" }, "linux")).toBe(true);
    expect(canOpenBrowser({ WAYLAND_DISPLAY: "wayland-0" }, "linux")).toBe(true);
    expect(canOpenBrowser({ DISPLAY: ":0", CI: "true" }, "linux")).toBe(false);
    expect(canOpenBrowser({}, "darwin")).toBe(true);
    expect(canOpenBrowser({ SSH_CONNECTION: "x" }, "darwin")).toBe(false);
  });
});
