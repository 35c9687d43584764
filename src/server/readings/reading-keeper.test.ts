import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { sqlitePlace } from "../../store/testing/places.ts";
import * as sample from "../../store/testing/sample-records.ts";
import type { StudioStore } from "../../studio/records/store.ts";
import { Allowance } from "./allowance.ts";
import { type ProbeReadings, ReadingKeeper } from "./reading-keeper.ts";

const place = sqlitePlace();
let store: StudioStore;
let writes: number;
beforeAll(async () => {
  store = await place.openEmpty();
  await store.write(sample.fillStudio);
});
afterAll(async () => {
  await store.close();
  await place.end();
});
beforeEach(async () => {
  await store.write((records) => records.readings.remove("firing-2"));
  writes = 0;
});

const counted = (): StudioStore => ({
  ...store,
  write: (change) => {
    writes++;
    return store.write(change);
  },
});
const of = (second: number, tempC = 20, firingId = "firing-2"): ProbeReadings => ({
  ...{ firingId, probe: "middle" },
  readings: [{ at: new Date(Date.parse(sample.MOMENT) + second * 1000).toISOString(), tempC }],
});
const temps = async () => {
  const [series] = await store.read((records) => records.readings.of("firing-2"));
  return series?.readings.map(({ tempC }) => tempC);
};

describe("the keeper of readings", () => {
  test("keeps what comes at the same time in one transaction; of one moment the last sent counts", async () => {
    const keeper = new ReadingKeeper(counted());
    await Promise.all([keeper.keep(of(1, 10)), keeper.keep(of(2, 20)), keeper.keep(of(1, 30))]);
    expect([writes, await temps()]).toEqual([1, [30, 20]]);
    await keeper.close();
  });

  test("tells those who listen only what is on the disk", async () => {
    const keeper = new ReadingKeeper(counted());
    const heard: ProbeReadings[] = [];
    const stop = keeper.listen((kept) => heard.push(kept));
    const bad = keeper.keep(of(2, 20, "nobody"));
    const good = keeper.keep(of(1, 10));
    await expect(bad).rejects.toMatchObject({ code: "unknown-record" });
    await good;
    expect(heard).toEqual([of(1, 10)]);
    stop();
    await keeper.keep(of(3, 30));
    expect(heard).toHaveLength(1);
    await keeper.close();
  });

  test("keeps what still waits before it closes, and says so where the store fails", async () => {
    const keeper = new ReadingKeeper(counted());
    const waiting = keeper.keep(of(1, 10), 60_000);
    await keeper.close();
    await waiting;
    expect(await temps()).toEqual([10]);
    const broken = new ReadingKeeper({ ...store, write: () => Promise.reject(new Error("the disk is full")) });
    const both = await Promise.allSettled([broken.keep(of(1)), broken.keep(of(2))]);
    expect(both.map(({ status }) => status)).toEqual(["rejected", "rejected"]);
  });
});

test("a logger may send what it saved up over a night, and then as much a second as five thousand probes", () => {
  const allowance = new Allowance();
  expect(allowance.take("a", 50_000, 0)).toBe(0);
  expect(allowance.take("a", 5000, 0)).toBe(1000);
  expect(allowance.take("b", 5000, 0)).toBe(0);
  expect(allowance.take("a", 5000, 1000)).toBe(0);
  expect(allowance.take("a", 1, 1000)).toBeGreaterThan(0);
});
