// The store at the size of a busy studio: 5,000 batches of ware, 100 photos, 50,000 readings. Processor time; the disk
// comes on top. Yardstick in the same run: the same rows through bare SQLite statements, unchecked.
// Run: node benchmarks/store.ts

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { readArchive } from "../src/store/archive/read-archive.ts";
import { restoreArchive } from "../src/store/archive/restore-archive.ts";
import { writeArchive } from "../src/store/archive/write-archive.ts";
import { openSqliteStore } from "../src/store/sqlite-store.ts";
import { fillStudio, LATER, PICTURE, photo, ware } from "../src/store/testing/sample-records.ts";
import { machine } from "./results.ts";

const [BATCHES, PHOTOS, READINGS] = [5000, 100, 50_000];

async function measured<Result>(what: string, run: () => Promise<Result> | Result): Promise<Result> {
  const before = process.cpuUsage();
  const started = performance.now();
  const result = await run();
  const used = process.cpuUsage(before);
  const wallMs = Math.round(performance.now() - started);
  console.log(`${what.padEnd(56)} ${Math.round((used.user + used.system) / 1000)} ms processor, ${wallMs} ms in all`);
  return result;
}

const folder = mkdtempSync(join(tmpdir(), "studio-bench-"));
try {
  console.log(machine());
  const store = await openSqliteStore(join(folder, "studio.db"));
  await store.write(fillStudio);
  const batches = Array.from({ length: BATCHES }, (_, i) => ware(`batch-${i}`));
  await measured(`keep ${BATCHES} batches`, () => store.write((records) => records.ware.add(...batches)));
  for (let i = 0; i < 3; i++)
    await measured(`list ${BATCHES} batches`, () => store.read((records) => records.ware.list()));

  const bare = new DatabaseSync(join(folder, "bare.db"));
  bare.exec("pragma journal_mode = wal; create table ware (id text primary key, ware text, rest text) strict");
  await measured(`yardstick: keep ${BATCHES} bare rows`, () => {
    bare.exec("begin");
    const insert = bare.prepare("insert into ware values (?, ?, ?)");
    for (const { id, ware: piece, ...rest } of batches) insert.run(id, JSON.stringify(piece), JSON.stringify(rest));
    bare.exec("commit");
  });
  for (let i = 0; i < 3; i++) {
    await measured(`yardstick: list ${BATCHES} bare rows`, () =>
      bare
        .prepare("select * from ware order by id")
        .all()
        .map((row) => [JSON.parse(String(row.ware)), row.rest]),
    );
  }
  bare.close();

  await measured("100 changes, each acknowledged by itself", async () => {
    for (let i = 0; i < 100; i++) await store.write((records) => records.ware.change(ware(`batch-${i}`)));
  });
  const picture = new Uint8Array(300_000);
  picture.set(PICTURE);
  await store.write(async (records) => {
    for (let i = 0; i < PHOTOS; i++) await records.photos.add(photo(`p-${i}`, { byteLength: picture.length }), picture);
  });
  const minute = (i: number): string => new Date(Date.parse(LATER) + i * 60_000).toISOString();
  const readings = Array.from({ length: READINGS }, (_, i) => ({ at: minute(i), tempC: 20 + i / 100 }));
  await measured(`keep ${READINGS} readings`, () =>
    store.write((records) => records.readings.add("firing-1", "long", readings)),
  );
  const bytes = await measured("write the archive", () => writeArchive(store, LATER));
  const archive = await measured(`read and check it (${Math.round(bytes.length / 1e6)} MB)`, () => readArchive(bytes));
  const other = await openSqliteStore(join(folder, "other.db"));
  await measured("restore it", () => restoreArchive(other, archive, { saveFirst: async () => {}, now: LATER }));
  await store.close();
  await other.close();
} finally {
  rmSync(folder, { recursive: true });
}
