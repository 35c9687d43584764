// Readings at the size of years: 10 million stored, a day of ten kilns looked at, readings coming in by HTTP. Yardsticks in
// the same run: the same readings through one bare SQLite statement, as many a transaction; and a whole day read bare.
// Run: node benchmarks/readings.ts [--stored 10000000] [--seconds 10]

import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { newToken } from "../src/server/readings/loggers.ts";
import { shownReadings } from "../src/server/readings/shown-readings.ts";
import { prepareDataFolder, storeFile } from "../src/server/running/data-folder.ts";
import { openSqliteStore } from "../src/store/sqlite-store.ts";
import { firing, kiln } from "../src/store/testing/sample-records.ts";
import type { StudioStore } from "../src/studio/records/store.ts";
import { machine } from "./results.ts";
import { median, type Row, tableLines } from "./row.ts";

const { values } = parseArgs({
  options: { stored: { type: "string", default: "10000000" }, seconds: { type: "string", default: "10" } },
});
const [STORED, SECONDS] = [Number(values.stored), Number(values.seconds)];
const [KILNS, DAY_S, A_TIME] = [10, 86_400, 5000];
const BEGIN_MS = Date.parse("2026-01-01T00:00:00.000Z");
const SENDERS = 128;
const READINGS_A_REQUEST = 1;

const moment = (second: number): string => new Date(BEGIN_MS + second * 1000).toISOString();
const readingsOf = (day: number, from: number) =>
  Array.from({ length: A_TIME }, (_, i) => {
    const second = day * DAY_S + from + i;
    return { at: moment(second), tempC: Math.round((20 + ((second * 7) % 12_000) / 10) * 10) / 10 };
  }).slice(0, DAY_S - from);
const firingId = (day: number, k: number): string => `firing-${String(day).padStart(4, "0")}-${k}`;
const stamps = { createdAt: moment(0), changedAt: moment(0) };
const { token, tokenHash } = newToken();

async function fill(store: StudioStore, days: number): Promise<void> {
  const kilns = Array.from({ length: KILNS }, (_, k) => ({ ...kiln(`kiln-${k}`), ...stamps }));
  await store.write((records) => records.kilns.add(...kilns));
  const common = { programme: null, loadId: null, meterReadings: [], ...stamps };
  for (let day = 0; day < days; day++) {
    for (let k = 0; k < KILNS; k++) {
      const [startedAt, endedAt] = [moment(day * DAY_S), moment((day + 1) * DAY_S - 1)];
      const course = { ...common, kilnId: `kiln-${k}`, state: "finished", startedAt, endedAt } as const;
      const id = firingId(day, k);
      await store.write((records) => records.firings.add(firing(id, course)));
      for (let from = 0; from < DAY_S; from += A_TIME * 4) {
        await store.write(async (records) => {
          for (let i = 0; i < 4 && from + i * A_TIME < DAY_S; i++) {
            await records.readings.add(id, "thermocouple", readingsOf(day, from + i * A_TIME));
          }
        });
      }
    }
    process.stderr.write(`\r${(((day + 1) * KILNS * DAY_S) / 1e6).toFixed(1)} million stored`);
  }
  process.stderr.write("\n");
  await store.write(async (records) => {
    const course = {
      ...common,
      kilnId: "kiln-0",
      state: "firing",
      startedAt: moment(days * DAY_S),
      endedAt: null,
    } as const;
    await records.firings.add(firing("now", course));
    await records.loggers.add({ id: "l", kilnId: "kiln-0", probe: "thermocouple", name: "l", tokenHash, ...stamps });
  });
}

/** The day of ten kilns, as the server answers it: by minute, JSON and all. Milliseconds of each look. */
async function dayViews(store: StudioStore, days: number): Promise<{ ms: number[]; points: number }> {
  const ms: number[] = [];
  let points = 0;
  for (let i = 0; i < 11; i++) {
    const day = (i * 7) % days;
    const started = performance.now();
    for (let k = 0; k < KILNS; k++) {
      const shown = await store.read((records) => shownReadings(records, firingId(day, k), { most: 2000 }));
      points = shown.series[0]?.at.length ?? 0;
      JSON.stringify(shown);
    }
    ms.push(performance.now() - started);
  }
  return { ms: ms.slice(1), points: points * KILNS };
}

/** The yardstick for a look: the same day, every reading, by the barest statement there is. */
function bareDay(file: string, day: number): number {
  const database = new DatabaseSync(file, { readOnly: true });
  const statement = database.prepare(
    `select "at", "tempC" from "readings" where "firingId" = ? order by "probe", "at"`,
  );
  const started = performance.now();
  for (let k = 0; k < KILNS; k++) statement.all(firingId(day, k));
  const ms = performance.now() - started;
  database.close();
  return ms;
}

const agent = new Agent({ keepAlive: true, maxSockets: SENDERS });

/** As a logger does it, and as cheaply as may be: the senders share the machine with the server. */
function post(address: string, body: string): Promise<void> {
  const headers = {
    "content-type": "application/json",
    authorization: `Bearer ${token}`,
    "content-length": body.length,
  };
  return new Promise((resolve, reject) => {
    const sent = request(`${address}/api/readings`, { method: "POST", agent, headers }, (answer) => {
      answer.resume();
      answer.once("end", () => (answer.statusCode === 200 ? resolve() : reject(new Error(`${answer.statusCode}`))));
      answer.once("error", reject);
    });
    sent.once("error", reject);
    sent.end(body);
  });
}

/** The server as she starts it, on one core, and what it acknowledges in so many seconds. */
async function ingest(
  folder: string,
  from: number,
): Promise<{ acknowledged: number; perSecond: number; cpuShare: number; lost: number }> {
  const main = fileURLToPath(new URL("../dist/cli/main.js", import.meta.url));
  const words = [main, "serve", "--json", "--no-open", "--port", "0", "--data", folder];
  const server = spawn("taskset", ["-c", "0", process.execPath, ...words], { stdio: ["ignore", "pipe", "inherit"] });
  const address: string = await new Promise((resolve, reject) => {
    server.once("exit", () => reject(new Error("The server did not start; build first: node bin/begin.mjs build")));
    server.stdout.once("data", (line) => resolve(JSON.parse(String(line)).address));
  });
  let [next, isOver] = [from, false];
  const acknowledged: number[] = [];
  const send = async (): Promise<void> => {
    while (!isOver) {
      const seconds = Array.from({ length: READINGS_A_REQUEST }, () => next++);
      const readings = seconds.map((second) => ({ at: moment(second), tempC: second % 1300 }));
      try {
        await post(address, JSON.stringify({ readings }));
        acknowledged.push(...seconds);
      } catch (error) {
        if (!isOver) throw error;
      }
    }
  };
  const started = performance.now();
  const senders = Array.from({ length: SENDERS }, send);
  await new Promise((resolve) => setTimeout(resolve, SECONDS * 1000));
  const perSecond = acknowledged.length / ((performance.now() - started) / 1000);
  const cpuShare = cpuSeconds(server.pid as number) / ((performance.now() - started) / 1000);
  isOver = true;
  server.kill("SIGKILL");
  await Promise.all(senders);
  const store = await openSqliteStore(storeFile(folder));
  const [series] = await store.read((records) => records.readings.of("now"));
  await store.close();
  const kept = new Set(series?.readings.map(({ at }) => at));
  return {
    acknowledged: acknowledged.length,
    perSecond,
    cpuShare,
    lost: acknowledged.filter((s) => !kept.has(moment(s))).length,
  };
}

/** Processor time of another process so far (proc(5): fields 14 and 15 of stat, in hundredths of a second). */
function cpuSeconds(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1]?.split(" ") ?? [];
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

/** The yardstick for what comes in: bare inserts, so many a transaction, each transaction on the disk before the next. */
function bareInserts(file: string, aTransaction: number): number {
  const database = new DatabaseSync(file);
  database.exec(
    `pragma journal_mode = wal; pragma synchronous = full; create table "readings" ("firingId" text not null, "probe" text not null,
     "at" text not null, "tempC" real not null, primary key ("firingId", "probe", "at")) strict`,
  );
  const insert = database.prepare(`insert into "readings" values (?, ?, ?, ?)`);
  const started = performance.now();
  let n = 0;
  while (performance.now() - started < 3000) {
    database.exec("begin immediate");
    for (let i = 0; i < aTransaction; i++, n++) insert.run("now", "thermocouple", moment(n), n % 1300);
    database.exec("commit");
  }
  const perSecond = n / ((performance.now() - started) / 1000);
  database.close();
  return perSecond;
}

const folder = mkdtempSync(join(tmpdir(), "studio-readings-bench-"));
try {
  console.log(machine());
  prepareDataFolder(folder);
  const file = storeFile(folder);
  const days = Math.max(1, Math.ceil(STORED / (KILNS * DAY_S)));
  const store = await openSqliteStore(file);
  const before = process.cpuUsage();
  const began = performance.now();
  await fill(store, days);
  const used = process.cpuUsage(before);
  const stored = days * KILNS * DAY_S;
  const fillS = (performance.now() - began) / 1000;
  const { ms, points } = await dayViews(store, days);
  await store.close();
  const gigabytes = statSync(file).size / 1e9;
  const bareMs = bareDay(file, Math.floor(days / 2));
  const came = await ingest(folder, days * DAY_S + 1);
  const bare = bareInserts(join(folder, "bare.sqlite"), Math.round(came.perSecond / 50));
  const slowest = Math.max(...ms);
  const rows: Row[] = [
    {
      what: `day view of ${KILNS} kilns with ${(stored / 1e6).toFixed(1)} million stored`,
      target: "≤ 200 ms",
      found: `${median(ms).toFixed(0)} ms, slowest ${slowest.toFixed(0)} ms (${points} points)`,
      met: slowest <= 200,
    },
    {
      what: "  yardstick: the same day, every reading, bare SQLite",
      target: "",
      found: `${bareMs.toFixed(0)} ms (${KILNS * DAY_S} readings)`,
      met: null,
    },
    {
      what: `readings by HTTP, ${READINGS_A_REQUEST} a request, server on one core`,
      target: "≥ 2000 a second",
      found: `${came.perSecond.toFixed(0)} a second, ${(came.cpuShare * 100).toFixed(0)} % of the core`,
      met: came.perSecond >= 2000,
    },
    {
      what: "  yardstick: bare SQLite inserts, as many a transaction",
      target: "",
      found: `${bare.toFixed(0)} a second`,
      met: null,
    },
    {
      what: "lost across SIGKILL of what was acknowledged",
      target: "0",
      found: `${came.lost} of ${came.acknowledged}`,
      met: came.lost === 0,
    },
    {
      what: "stored through the server's own store, 20,000 a transaction",
      target: "",
      found: `${(stored / fillS).toFixed(0)} a second, ${((used.user + used.system) / 1e6 / (stored / 1e6)).toFixed(1)} µs processor each, ${gigabytes.toFixed(2)} GB`,
      met: null,
    },
  ];
  for (const line of tableLines(rows)) console.log(line);
} finally {
  rmSync(folder, { recursive: true });
}
