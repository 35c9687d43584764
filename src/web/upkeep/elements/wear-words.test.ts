import { expect, test } from "vitest";
import type { ElementWear } from "../../../studio/firings/element-wear.ts";
import { wearFrame } from "./wear-frame.ts";
import { remainingWords, wornWords } from "./wear-words.ts";

const wear: ElementWear = {
  points: [
    { at: "2026-01-01T00:00:00Z", firings: 0, rise: 0, ohms: [20] },
    { at: "2026-03-01T00:00:00Z", firings: 20, rise: 0.05, ohms: [21] },
  ],
  ...{ fromNew: true, powerLeft: 1 / 1.05, risePerFiring: 0.0025 },
  limit: { rise: 1 / 0.9 - 1, reason: "", source: "" },
  remainingFirings: { expected: 24.4, least: 24.4, most: 24.4 },
  notes: [],
};

test("wear in words: power gone by Ohm's law, the rise a firing", () => {
  expect(wornWords(wear)).toBe("4.8 % of the power is gone; resistance rises by 0.25 % a firing.");
  expect(wornWords({ ...wear, fromNew: false, risePerFiring: null })).toBe(
    "4.8 % of the power is gone since they were first measured.",
  );
  expect(wornWords({ ...wear, powerLeft: null })).toBeNull();
});

test("what is left is told with its spread, or that there is none to tell", () => {
  const left = (expected: number, least: number, most: number | null) =>
    remainingWords({ ...wear, remainingFirings: { expected, least, most } });
  expect(remainingWords(wear)).toMatch(/about 24 firings are left; two measurings do not tell/);
  expect(left(60, 41.2, 110)).toBe("At this pace about 60 firings are left, likely between 41 and 110 firings.");
  expect(left(60, 20, null)).toMatch(/20 firings at least/);
  expect(left(0, 0, 0)).toMatch(/at their end/);
  expect(remainingWords({ ...wear, remainingFirings: null })).toBeNull();
});

test("the chart reaches past today to where the line meets the limit, and over the limit", () => {
  const frame = wearFrame(wear, 20);
  expect(frame.lastFiring).toBeGreaterThanOrEqual(44);
  expect(frame.topRise).toBeGreaterThan(wear.limit.rise);
  expect(frame.riseAt(20)).toBeCloseTo(0.05, 9);
  expect(frame.riseAt(44.4)).toBeCloseTo(wear.limit.rise, 2);
});
