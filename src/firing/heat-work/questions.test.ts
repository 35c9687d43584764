import { expect, test } from "vitest";
import { NATURAL_COOLING, withHoldAndCooling } from "./cooling.ts";
import { curveThrough } from "./curve.ts";
import { degreesOfHold, holdChoices, holdToDrop, peakToDrop, whereReached, workOf } from "./questions.ts";

const climb = (rate: number, topC: number) =>
  curveThrough([
    [0, 20],
    [((topC - 20) / rate) * 60, topC],
  ]);

test("the peak that drops a cone is a few degrees below the table's, because cooling counts", () => {
  for (const [cone, rate, tableC] of [
    ["6", 60, 1222],
    ["04", 60, 1063],
    ["10", 150, 1305],
  ] as const) {
    const peakC = peakToDrop(cone, rate);
    expect(tableC - peakC).toBeGreaterThan(1);
    expect(tableC - peakC).toBeLessThan(15);
    expect(workOf(cone, withHoldAndCooling(climb(rate, peakC), 0, NATURAL_COOLING))).toBeCloseTo(1, 3);
  }
});

test("the hold that drops a cone does drop it, and a minute less does not", () => {
  const below = climb(60, 1200);
  const minutes = holdToDrop("6", below) as number;
  const work = (holdMin: number): number => workOf("6", withHoldAndCooling(below, holdMin, NATURAL_COOLING));
  expect(work(minutes)).toBeGreaterThanOrEqual(1);
  expect(work(minutes - 1)).toBeLessThan(1);
  expect(holdToDrop("6", climb(60, 1225))).toBe(0);
  expect(holdToDrop("6", climb(60, 900))).toBeNull();
});

test("a cooler hold is a longer one", () => {
  const choices = holdChoices("6", 60);
  expect(choices.length).toBeGreaterThan(3);
  choices.slice(1).forEach((choice, i) => {
    expect(choice.holdMin).toBeGreaterThan(choices[i]?.holdMin ?? 0);
  });
});

test("a hold is worth degrees, more of them after a fast climb, and no fixed share of a cone", () => {
  expect(degreesOfHold("6", 60, 0)).toBeCloseTo(0, 6);
  expect(degreesOfHold("6", 150, 15)).toBeGreaterThan(degreesOfHold("6", 60, 15));
  expect(degreesOfHold("6", 60, 15)).not.toBeCloseTo(degreesOfHold("05", 60, 15), 0);
});

test("halving ends at or beyond the value, or says that it is out of reach", () => {
  expect(whereReached((at) => at * at, 2, 0, 4, 1e-9)).toBeCloseTo(Math.SQRT2, 8);
  expect(whereReached((at) => at, 5, 0, 4, 1e-9)).toBeNull();
  expect(whereReached((at) => at, -1, 0, 4, 1e-9)).toBe(0);
});

test.each([0, -60, Number.NaN, 5000])("refuses a rate of %d °C/h", (rate) => {
  expect(() => peakToDrop("6", rate)).toThrow(/cPerHour/);
});
