import { describe, expect, test } from "vitest";
import type { FiringAgainst } from "../../../studio/firings/predicted-against-actual.ts";
import { howFarOffWords, pairsOf, scaleOf } from "./against-words.ts";

const nothing = { foretold: null, actual: null, off: null };
const row = (id: number, more: Partial<FiringAgainst> = {}): FiringAgainst => ({
  ...{ firingId: `f${id}`, name: `firing ${id}`, kilnId: "k", startedAt: `2026-11-0${id}T08:00:00Z` },
  ...{ calibrated: false, hours: nothing, kWh: nothing, peakC: nothing, coolHours: nothing, shelves: [] },
  ...{ shelfRmsC: null, ...more },
});
const pair = (foretold: number, actual: number) => ({ foretold, actual, off: actual - foretold });

test("firings of which nothing is known are left out, and of many the last are shown", () => {
  const rows = [row(1), row(2, { kWh: pair(30, 31) }), row(3, { kWh: pair(30, 29) }), row(4, { kWh: pair(30, 30) })];
  expect(pairsOf(rows, "kWh", 2).map(({ firingId }) => firingId)).toEqual(["f3", "f4"]);
  expect(pairsOf(rows, "hours", 9)).toEqual([]);
});

describe("a scale", () => {
  test("holds every value between round numbers, from zero up where none is below", () => {
    expect(scaleOf([28.4, 31.2], 5)).toEqual([26, 34]);
    expect(scaleOf([0.2, 0.3], 4)).toEqual([0, 3]);
    expect(scaleOf([-7, 12], 20)).toEqual([-10, 20]);
  });
  test("of one value, or none, is wide enough to be drawn", () => {
    const [from, to] = scaleOf([40], 10);
    expect(from).toBeLessThan(40);
    expect(to).toBeGreaterThan(40);
    expect(scaleOf([], 10)).toEqual([0, 10]);
  });
});

test("how far off is told before and after learning, a root mean square by hand", () => {
  // 10 % and 20 % of what was measured: √((100 + 400) / 2) = 15.8.
  const before = [row(1, { kWh: pair(27, 30) }), row(2, { kWh: pair(24, 30) })];
  const since = row(3, { calibrated: true, kWh: pair(29.4, 30) });
  expect(howFarOffWords(before, "kWhPercent", "C")).toBe(
    "Off by 16 % in 2 firings, foretold from the kiln as described.",
  );
  expect(howFarOffWords([...before, since], "kWhPercent", "C")).toBe(
    "Off by 16 % in 2 firings as described; by 2 % in one firing since it was learned from.",
  );
  const shelves = row(4, { shelves: [{ level: 0, ...pair(1220, 1230) }] });
  expect(howFarOffWords([shelves], "shelfC", "F")).toBe(
    "Off by 18 °F in one firing, foretold from the kiln as described.",
  );
  expect(howFarOffWords([row(5)], "shelfC", "C")).toBeNull();
});
