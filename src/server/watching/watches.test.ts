import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as sample from "../../store/testing/sample-records.ts";
import type { StudioEvent } from "../../studio/api/contract.ts";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { newToken } from "../readings/loggers.ts";
import { listen } from "../testing/listen.ts";
import { type TestStudio, testStudio } from "../testing/test-studio.ts";

// The studio's clock begins at 2026-11-25T09:00:00.000Z and moves when it is told to.
const STARTED_MS = Date.parse("2026-11-25T06:00:00.000Z");
const moment = (minute: number): string => new Date(STARTED_MS + minute * 60_000).toISOString();
const stamps = { createdAt: sample.MOMENT, changedAt: sample.MOMENT };
const { token, tokenHash } = newToken();
const logger = { id: "logger-1", kilnId: "kiln-1", probe: "thermocouple", name: "shed", tokenHash, ...stamps };
const programme = {
  format: "programme/1" as const,
  name: "glaze, cone 6",
  cone: "6",
  kind: "glaze" as const,
  segments: [{ rateCPerHour: 100, targetC: 1222, holdMin: 10 }],
};
const hot = (changes: Partial<FiringRecord> = {}): FiringRecord => ({
  ...{ id: "hot", kilnId: "kiln-1", loadId: null, name: "tide and slate", state: "firing", programme },
  ...{ startedAt: moment(0), endedAt: null, meterReadings: [], ...stamps, ...changes },
});

/** The machine may be busy with other tests. */
const PATIENCE = { timeout: 30_000 };

let studio: TestStudio;
let hour: number;
const fill = async (studioNew: TestStudio, firing = hot()) =>
  studioNew.store.write(async (records) => {
    await records.kilns.add(sample.kiln());
    await records.firings.add(firing);
    await records.loggers.add(logger);
  });
beforeEach(async () => {
  hour = 12;
  studio = await testStudio({ more: { hourOf: () => hour } });
});
afterEach(async () => {
  await studio.end();
  expect(studio.complaints).toEqual([]);
});

const send = (from: number, to: number, tempC: (minute: number) => number, everyMin = 1) => {
  const readings = [];
  for (let minute = from; minute <= to; minute += everyMin) readings.push({ at: moment(minute), tempC: tempC(minute) });
  const headers = { authorization: `Bearer ${token}` };
  return studio.ask("POST", "/readings", { payload: JSON.stringify({ readings }), headers });
};
/** As asked, to a tenth of a degree, with a little noise that repeats. */
const asAsked = (minute: number): number => Math.round((20 + (100 * minute) / 60 + Math.sin(minute) * 0.6) * 10) / 10;
const watch = async (): Promise<FiringWatch> => (await studio.ask("GET", "/firings/hot/watch")).json();
const until = async (is: (watch: FiringWatch) => boolean): Promise<FiringWatch> => {
  for (let tries = 0; tries < 600; tries++) {
    const now = await watch();
    if (is(now)) return now;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(JSON.stringify(await watch()));
};
const noticesOf = async () => (await studio.store.read(({ firings }) => firings.get("hot")))?.notices ?? [];

describe("a firing under way", () => {
  test("is watched by its readings: its place, heat work, when its cone goes down and when it has cooled", async () => {
    await fill(studio);
    expect(await watch()).toMatchObject({
      startedAt: moment(0),
      pace: 1,
      latest: null,
      place: null,
      heat: [],
      outlook: null,
    });
    expect((await send(0, 170, asAsked)).json().kept).toBe(171);
    const { place, heat, faults, outlook, latest } = await until((now) => now.outlook !== null);
    expect(latest).toEqual({ at: moment(170), tempC: asAsked(170), probe: "thermocouple" });
    expect(place).toMatchObject({ segment: 0, doing: "ramp", rising: true, askedCPerHour: 100 });
    expect(place?.behindC).toBeCloseTo(0, -1);
    expect(faults).toEqual([]);
    expect(heat[0]).toMatchObject({ level: null, coneDown: null });
    expect(heat[0]?.cones.map(({ cone }) => cone)).toContain("6");
    // 1202 K of ramp at 100 °C/h take 12 h 1 min, and the hold 10 min.
    const end = outlook?.shutOff;
    expect(end?.fromMin).toBeLessThan(731);
    expect(end?.toMin).toBeGreaterThan(731);
    expect(outlook?.cone?.cone).toBe("6");
    // The energy is that of a kiln of its size (design: 25 to 35 kWh, about 57 litres), most of it still to come.
    expect(outlook?.kWh?.soFar).toBeGreaterThan(1);
    expect(outlook?.kWh?.inAll).toBeGreaterThan(25);
    expect(outlook?.kWh?.inAll).toBeLessThan(70);
    expect(outlook?.curve[0]?.[0]).toBeGreaterThan(160);
    expect(Math.max(...(outlook?.curve ?? []).map(([, tempC]) => tempC))).toBeCloseTo(1222, -1);
    expect(outlook?.cool.map(({ tempC }) => tempC)).toEqual([200, 120, 95, 50]);
    expect((await studio.ask("GET", "/firings/nobody/watch")).statusCode).toBe(404);
  });

  test("that goes silent is noticed by the studio's clock, once: written down, told to open browsers, and over when readings come", async () => {
    await fill(studio);
    const address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
    const told = listen<StudioEvent>(
      `${address.replace("127.0.0.1", "localhost")}/api/events`,
      ({ notice }) => notice !== undefined,
    );
    await send(0, 179, asAsked);
    await until((now) => now.place !== null);
    studio.wait(11 * 60_000);
    const silent = await until((now) => now.faults.length > 0);
    expect(silent.faults).toMatchObject([{ kind: "silence", sinceMin: 179, untilMin: null, isDanger: false }]);
    const notice = (await told).at(-1)?.notice;
    expect(notice).toMatchObject({ kind: "silence", firingName: "tide and slate", since: moment(179), until: null });
    await expect.poll(noticesOf, PATIENCE).toMatchObject([{ id: notice?.id, kind: "silence", until: null }]);
    await send(190, 192, asAsked);
    await until((now) => now.faults[0]?.untilMin === 190);
    await expect.poll(noticesOf, PATIENCE).toMatchObject([{ id: notice?.id, kind: "silence", until: moment(190) }]);
  });

  test("is watched again after a restart from what is stored, and tells nobody twice", async () => {
    await fill(studio);
    // A relay that welds: the kiln runs away from its programme.
    const runaway = (minute: number): number => asAsked(minute) + Math.max(0, minute - 150) * 4;
    await send(0, 178, runaway);
    const before = await until((now) => now.faults.some(({ kind }) => kind === "overshoot"));
    await expect.poll(noticesOf, PATIENCE).toMatchObject([{ kind: "overshoot", until: null }]);
    const again = await testStudio({ more: { store: studio.store, dataFolder: studio.folder, hourOf: () => hour } });
    const told: StudioEvent[] = [];
    const address = await again.app.listen({ port: 0, host: "127.0.0.1" });
    void listen<StudioEvent>(`${address.replace("127.0.0.1", "localhost")}/api/events`, (event) => {
      told.push(event);
      return false;
    }).catch(() => {});
    const ask = async (): Promise<FiringWatch> => (await again.ask("GET", "/firings/hot/watch")).json();
    await expect.poll(async () => (await ask()).faults, PATIENCE).toEqual(before.faults);
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(told.filter(({ notice }) => notice !== undefined)).toEqual([]);
    expect(await noticesOf()).toHaveLength(1);
    await again.app.close();
  });

  test("is under way no more once she ends it: its stream ends, what lasted is over", async () => {
    await fill(studio);
    await send(0, 170, asAsked);
    await until((now) => now.place !== null);
    studio.wait(11 * 60_000);
    await until((now) => now.faults.length > 0);
    await expect.poll(noticesOf, PATIENCE).toHaveLength(1);
    const address = await studio.app.listen({ port: 0, host: "127.0.0.1" });
    const heard = listen<FiringWatch>(`${address.replace("127.0.0.1", "localhost")}/api/firings/hot/watch/events`);
    await new Promise((resolve) => setTimeout(resolve, 200));
    const call = JSON.stringify({ key: "end", input: { id: "hot", at: moment(185), brokenOff: true } });
    expect((await studio.ask("POST", "/commands/end-firing", { payload: call })).statusCode).toBe(200);
    expect((await heard).length).toBeGreaterThanOrEqual(1);
    await expect.poll(noticesOf, PATIENCE).toMatchObject([{ kind: "silence", until: moment(185) }]);
    const over = await studio.ask("GET", "/firings/hot/watch");
    expect([over.statusCode, over.json().error.code]).toEqual([409, "not-under-way"]);
  });

  test("is watched by the probe its controller goes by, also where another read before", async () => {
    await fill(studio);
    const typed = JSON.stringify({ at: moment(1), tempC: 30, probe: "lid" });
    expect((await studio.ask("POST", "/firings/hot/readings", { payload: typed })).statusCode).toBe(200);
    await until((now) => now.latest?.probe === "lid");
    await send(0, 20, asAsked);
    const { latest, faults } = await until((now) => now.latest?.at === moment(20));
    expect([latest?.probe, faults]).toEqual(["thermocouple", []]);
  });

  test("without a programme shows its readings and no more", async () => {
    await fill(studio, hot({ programme: null }));
    await send(0, 10, asAsked);
    const shown = await until((now) => now.latest !== null);
    expect(shown).toMatchObject({ latest: { at: moment(10) }, place: null, outlook: null, faults: [] });
  });
});
