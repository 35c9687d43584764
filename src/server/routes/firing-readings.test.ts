import { afterAll, beforeAll, expect, test } from "vitest";
import * as sample from "../../store/testing/sample-records.ts";
import type { LogLook, ShownReadings } from "../../studio/api/readings-contract.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

const BEGAN = "2026-11-25T08:00:00.000Z";
let studio: TestStudio;
beforeAll(async () => {
  studio = await testStudio();
  await studio.store.write(async (records) => {
    await sample.fillStudio(records);
    const changes = { loadId: null, programme: null, endedAt: null, meterReadings: [], startedAt: BEGAN };
    await records.firings.add(sample.firing("hot", { ...changes, state: "firing" }));
  });
});
afterAll(() => studio.end());

const post = (path: string, body: object) => studio.ask("POST", path, { payload: JSON.stringify(body) });
const shown = async (query: string): Promise<ShownReadings> =>
  (await studio.ask("GET", `/firings/hot/readings${query}`)).json();

test("a temperature typed in is the kiln's first probe's unless she says another, within the firing", async () => {
  expect((await post("/firings/hot/readings", { at: "2026-11-25T08:10:00Z", tempC: 60 })).json().kept).toBe(1);
  expect(
    (await post("/firings/hot/readings", { at: "2026-11-25T08:10:00Z", tempF: 212, probe: "lid" })).json().kept,
  ).toBe(1);
  const early = await post("/firings/hot/readings", { at: "2026-11-25T07:10:00Z", tempC: 60 });
  expect([early.statusCode, early.json().error.code]).toEqual([409, "no-firing-under-way"]);
  expect((await post("/firings/nobody/readings", { tempC: 60 })).statusCode).toBe(404);
  expect(await shown("")).toEqual({
    by: "raw",
    series: [
      { probe: "lid", at: ["2026-11-25T08:10:00.000Z"], tempC: [100] },
      { probe: "thermocouple", at: ["2026-11-25T08:10:00.000Z"], tempC: [60] },
    ],
    more: null,
  });
});

test("a log's file is looked at first; what it leaves open is asked; then it is kept", async () => {
  const csv = ["minute;temp", ...Array.from({ length: 240 }, (_, i) => `${i};${100 + i}`)].join("\n");
  const path = "/firings/hot/readings-csv";
  let options = {};
  const asked: string[] = [];
  for (;;) {
    const look = (await post(`${path}?preview=1`, { csv, options })).json() as LogLook;
    if (look.kind === "log") break;
    asked.push(look.about);
    options = look.choices[0]?.options ?? {};
  }
  expect(asked).toEqual(["startsAt"]);
  expect((await shown("?by=raw")).series[1]?.at).toHaveLength(1);
  const look = (await post(path, { csv, options })).json() as Extract<LogLook, { kind: "log" }>;
  expect(look).toMatchObject({ from: BEGAN, to: "2026-11-25T11:59:00.000Z", kept: true });
  expect(look.probes).toEqual([{ column: "temp", probe: "thermocouple", count: 240, leastC: 100, mostC: 339 }]);
  expect((await shown("?by=raw")).series[1]?.at).toHaveLength(240);
  expect((await post(path, { csv: "not,a\nlog,at all" })).json().error.code).toBe("not-a-log");
});

test("are shown as finely as fits, and in parts where they are wished finer", async () => {
  const fits = await shown("?most=100");
  expect([fits.by, fits.more, fits.series[1]?.at.length]).toEqual(["hour", null, 4]);
  expect(fits.series[1]?.rolledUp).toMatchObject({ count: [60, 60, 60, 60], firstC: [100, 160, 220, 280] });
  const part = await shown("?by=raw&most=100");
  expect([part.series[1]?.at.length, part.more]).toEqual([100, "2026-11-25T09:40:00.000Z"]);
  const rest = await shown(`?by=raw&most=200&from=${part.more}`);
  expect([rest.series.map(({ probe }) => probe), rest.series[0]?.at.length, rest.more]).toEqual([
    ["thermocouple"],
    140,
    null,
  ]);
  for (const query of ["?most=0", "?most=x", "?by=day", "?from=yesterday", "?form=x"]) {
    expect([query, (await studio.ask("GET", `/firings/hot/readings${query}`)).statusCode]).toEqual([query, 400]);
  }
});
