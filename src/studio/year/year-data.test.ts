import { beforeAll, describe, expect, test } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import { studioInUse } from "../../store/testing/studio-in-use.ts";
import { DEMO_KILNS } from "../demo/demo-kilns.ts";
import { MADE_YEAR } from "./made-year.ts";
import { linearAt, straightened } from "./straightened.ts";
import { keptYear } from "./testing/kept-year.ts";
import { DEMO_YEAR, type PastYear, pastYear, yearAsData } from "./year-data.ts";
import { liveYear } from "./year-studio.ts";

const ENDS = "2026-09-20T12:00:00.000Z";
let past: PastYear;
beforeAll(() => {
  past = pastYear(ENDS, "the-kiln");
});

describe("the demo's past year, kept as data", () => {
  test("ends when it is to, within a minute, and is a year of firings", () => {
    const last = Math.max(...past.firings.map(({ endedAt }) => Date.parse(endedAt ?? "")));
    expect(Math.abs(last - Date.parse(ENDS))).toBeLessThanOrEqual(60_000);
    expect(past.firings.length).toBeGreaterThanOrEqual(26);
    for (const { createdAt, changedAt } of [...past.firings, ...past.loads, ...past.upkeep, ...past.calibrations]) {
      expect(createdAt <= changedAt).toBe(true);
      expect(Date.parse(changedAt) - Date.parse(ENDS)).toBeLessThan(3_600_000);
    }
    expect(past.readings.map(({ firingId }) => firingId)).toEqual(past.firings.map(({ id }) => id));
    for (const { readings } of past.readings) expect(readings.length).toBeGreaterThan(150);
  });

  test("passes every check of the records it is kept as, with its kiln and loads", async () => {
    const studio = await studioInUse();
    try {
      await studio.give("add-kiln", { id: "the-kiln", ...DEMO_KILNS.big });
      await studio.store.write(async (records) => {
        await records.loads.add(...past.loads);
        await records.firings.add(...past.firings);
        await records.upkeep.add(...past.upkeep);
        await records.calibrations.add(...past.calibrations);
        for (const { firingId, probe, readings } of past.readings)
          await records.readings.add(firingId, probe, readings);
      });
      const { firings } = await keptYear(studio.store);
      expect(firings).toHaveLength(past.firings.length);
    } finally {
      await studio.end();
    }
  });

  test("is what living it again gives: its first month, lived here", async () => {
    const studio = await studioInUse();
    try {
      await liveYear({ store: studio.store, ...DEMO_YEAR, months: 1 });
      const lived = yearAsData(await keptYear(studio.store));
      const made = JSON.parse(MADE_YEAR) as ReturnType<typeof yearAsData>;
      const asKept = JSON.parse(JSON.stringify(lived)) as typeof lived;
      const again = "no longer so: run `node src/cli/testing/make-demo-year.ts`";
      expect(made.firings.slice(0, 2), again).toEqual(asKept.firings);
      expect(made.calibrations.slice(0, 2), again).toEqual(asKept.calibrations);
      expect(made.curves.slice(0, 2), again).toEqual(asKept.curves);
    } finally {
      await studio.end();
    }
  });
});

test("a curve kept as a few points is near to all it was, whatever it was", () => {
  const chance = seededChance(4);
  for (let run = 0; run < 50; run++) {
    let celsius = 20;
    const points = Array.from({ length: 300 }, (_, minute): [number, number] => {
      celsius += 12 * (chance.next() - 0.4);
      return [minute, celsius];
    });
    const kept = straightened(points, 2);
    for (const [minute, tempC] of points)
      expect(Math.abs(linearAt(kept, minute) - tempC)).toBeLessThanOrEqual(2 + 1e-9);
    expect(kept.length).toBeLessThan(points.length);
  }
  expect(straightened([], 1)).toEqual([]);
  expect(straightened([[0, 20]], 1)).toEqual([[0, 20]]);
});
