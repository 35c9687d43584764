import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import type { StudioStore } from "../studio/records/store.ts";
import { type Backup, backUp, listBackups, readBackup, restoreBackup } from "./backups.ts";
import { sqlitePlace } from "./testing/places.ts";
import { everything, fillStudio, plainWare } from "./testing/sample-records.ts";

const place = sqlitePlace();
const HOUR_MS = 60 * 60 * 1000;
const START = Date.parse("2026-01-01T00:00:00.000Z");
const at = (hours: number): string => new Date(START + hours * HOUR_MS).toISOString();
let folder: string;
let store: StudioStore;
const stores: StudioStore[] = [];
const folders: string[] = [];
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "studio-backups-"));
  store = await place.openEmpty();
  folders.push(folder);
  stores.push(store);
});
afterAll(async () => {
  for (const each of stores) await each.close();
  for (const each of folders) rmSync(each, { recursive: true });
  await place.end();
});

describe("backups in a folder", () => {
  test("are named by their moment, listed newest first, and nothing else there is touched", async () => {
    writeFileSync(join(folder, "shopping list.txt"), "clay");
    writeFileSync(join(folder, "studio-2020-01-01.zip"), "hers");
    await backUp(store, folder, at(0));
    await backUp(store, folder, at(1));
    expect(listBackups(folder)).toEqual([
      { file: join(folder, "studio-2026-01-01T010000.000Z.zip"), madeAt: at(1), beforeRestore: false },
      { file: join(folder, "studio-2026-01-01T000000.000Z.zip"), madeAt: at(0), beforeRestore: false },
    ]);
    expect(readFileSync(join(folder, "shopping list.txt"), "utf8")).toBe("clay");
    expect(readFileSync(join(folder, "studio-2020-01-01.zip"), "utf8")).toBe("hers");
  });

  test("every six hours for a hundred days leave some thirty files", async () => {
    for (let hours = 0; hours <= 100 * 24; hours += 6) await backUp(store, folder, at(hours));
    const ages = listBackups(folder).map(
      ({ madeAt }) => (START + 2400 * HOUR_MS - Date.parse(madeAt)) / (24 * HOUR_MS),
    );
    expect(ages.length).toBeGreaterThan(28);
    expect(ages.length).toBeLessThan(36);
    expect(Math.max(...ages)).toBeGreaterThan(80);
  });

  test("bring the studio back, and what was there before can be had back too", async () => {
    await store.write(fillStudio);
    const full = await store.read(everything);
    await backUp(store, folder, at(0));
    await store.write((records) => records.clear());
    await store.write((records) => records.ware.add(plainWare("new")));
    const after = await store.read(everything);

    const [backup] = listBackups(folder);
    const saved = await restoreBackup(store, readBackup(backup as Backup), folder, at(5));
    expect(await store.read(everything)).toEqual(full);
    expect(saved).toBe(join(folder, "studio-2026-01-01T050000.000Z-before-restore.zip"));
    await restoreBackup(store, new Uint8Array(readFileSync(saved as string)), folder, at(6));
    expect(await store.read(everything)).toEqual(after);

    // Ten years on the plain backup is one of many, those from before a restore are still there.
    await backUp(store, folder, at(10 * 365 * 24));
    expect(listBackups(folder).filter(({ beforeRestore }) => beforeRestore)).toHaveLength(2);
  });

  test("a restore into an empty studio has nothing to save", async () => {
    const other = await place.openEmpty();
    stores.push(other);
    await other.write(fillStudio);
    await backUp(other, folder, at(0));
    const [backup] = listBackups(folder);
    expect(await restoreBackup(store, readBackup(backup as Backup), folder, at(1))).toBeNull();
    expect(await store.read(everything)).toEqual(await other.read(everything));
    expect(readdirSync(folder)).toHaveLength(1);
  });

  test("where the folder cannot be written, nothing is restored", async () => {
    await store.write(fillStudio);
    await backUp(store, folder, at(0));
    const bytes = readBackup(listBackups(folder)[0] as Backup);
    await store.write((records) => records.notes.remove("note-2"));
    const before = await store.read(everything);
    const blocked = join(folder, "a file");
    writeFileSync(blocked, "");
    await expect(restoreBackup(store, bytes, blocked, at(1))).rejects.toThrow();
    expect(await store.read(everything)).toEqual(before);
  });
});
