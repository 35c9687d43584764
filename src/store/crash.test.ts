import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { seededChance } from "../measures/seeded-chance.ts";
import { sqlitePlace } from "./testing/places.ts";
import { note } from "./testing/sample-records.ts";

const ROUNDS = 50;
const AT_ONCE = 2;
const LONGEST_LIFE_MS = 60;
const LONGEST_START_MS = 600;
const writer = fileURLToPath(new URL("testing/crash-writer.ts", import.meta.url));
const place = sqlitePlace();
// Fifty starts of one program: Node keeps what it compiled, once a first run of it has come to its own end.
const compiled = mkdtempSync(join(tmpdir(), "studio-compiled-"));
const env = { ...process.env, NODE_COMPILE_CACHE: compiled };
beforeAll(() => {
  const first = join(compiled, "first.db");
  const done = spawnSync(process.execPath, [writer, first, "first", "0", "2"], { env, encoding: "utf8" });
  expect([done.stdout, done.status], done.stderr).toEqual(["0\n1\n", 0]);
});
afterAll(async () => {
  await place.end();
  rmSync(compiled, { recursive: true, force: true });
});

/** When a writer dies: so long after it was started, whether it is still opening the file or writing; or after its first word. */
interface Death {
  readonly after: "start" | "first word";
  readonly ms: number;
}

/** Starts a writer and kills it. Gives the numbers it acknowledged. */
function writeUntilKilled(file: string, name: string, from: number, death: Death): Promise<number[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [writer, file, name, String(from)], {
      env,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const kill = () => setTimeout(() => child.kill("SIGKILL"), death.ms);
    if (death.after === "start") kill();
    let said = "";
    let complaint = "";
    child.stdout.on("data", (data) => {
      if (said === "" && death.after === "first word") kill();
      said += data;
    });
    child.stderr.on("data", (data) => {
      complaint += data;
    });
    child.on("close", (_, signal) => {
      if (signal !== "SIGKILL") reject(new Error(`The writer ended by itself: ${complaint}`));
      // A number without its line's end was cut off by the kill.
      else resolve(said.split("\n").slice(0, -1).map(Number));
    });
  });
}

test(`${ROUNDS} writers killed at random moments lose nothing acknowledged, while this process reads and writes`, async () => {
  const chance = seededChance(20261125);
  const store = await place.openEmpty();
  const acknowledged = new Map<string, number[]>();
  let running = true;
  let ours = 0;
  const alongside = (async () => {
    while (running) {
      await store.write((records) => records.notes.add(note(`ours-${ours}`)));
      ours++;
      await store.read((records) => records.notes.get(`ours-${ours - 1}`));
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  })();
  const lane = async (name: string, rounds: number) => {
    const numbers: number[] = [];
    for (let round = 0; round < rounds; round++) {
      // Far enough on: what the one before was writing when it died may have been kept.
      const from = round * 100_000;
      const death: Death =
        round % 5 === 4
          ? { after: "start", ms: chance.next() * LONGEST_START_MS }
          : { after: "first word", ms: chance.next() * LONGEST_LIFE_MS };
      const said = await writeUntilKilled(store.place, name, from, death);
      if (death.after === "first word") expect(said[0]).toBe(from);
      numbers.push(...said);
    }
    acknowledged.set(name, numbers);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, (_, i) => lane(`writer${i}`, ROUNDS / AT_ONCE)));
  running = false;
  await alongside;

  const { ware, notes } = await store.read(async (records) => ({
    ware: new Set((await records.ware.list()).map(({ id }) => id)),
    notes: new Map((await records.notes.list()).map(({ id, text }) => [id, text])),
  }));
  for (const [name, numbers] of acknowledged) {
    expect(numbers.length).toBeGreaterThanOrEqual((ROUNDS / AT_ONCE) * 0.8);
    for (const n of numbers) expect(ware).toContain(`${name}-${n}`);
    // The row that is written over and over holds the last change acknowledged, or a later one that was whole.
    const latest = Number(notes.get(`${name}-latest`));
    expect(latest).toBeGreaterThanOrEqual(numbers.at(-1) as number);
    expect(ware).toContain(`${name}-${latest}`);
  }
  // Whole transactions only: no piece without its note, no note without its piece.
  for (const id of ware) expect(notes.get(id)).toBe(`beside ${id}`);
  for (const id of notes.keys()) if (/^writer\d-\d/.test(id)) expect(ware).toContain(id);
  for (let n = 0; n < ours; n++) expect(notes.has(`ours-${n}`)).toBe(true);
  await store.close();
  const database = new DatabaseSync(store.place);
  expect(database.prepare("pragma integrity_check").all()).toEqual([{ integrity_check: "ok" }]);
  expect(database.prepare("pragma foreign_key_check").all()).toEqual([]);
  expect(database.prepare("pragma journal_mode").all()).toEqual([{ journal_mode: "wal" }]);
  database.close();
});

test("two processes that make the same new store at once both get it", async () => {
  const store = await place.openEmpty();
  const file = store.place.replace(/\.db$/, "-new.db");
  await store.close();
  const said = await Promise.all(
    ["a", "b", "c"].map((name) => writeUntilKilled(file, name, 0, { after: "first word", ms: 20 })),
  );
  for (const numbers of said) expect(numbers[0]).toBe(0);
  const made = await place.reopen({ ...store, place: file });
  const ids = (await made.read((records) => records.ware.list())).map(({ id }) => id);
  for (const name of ["a", "b", "c"]) expect(ids).toContain(`${name}-0`);
  await made.close();
});
