import { expect, test } from "vitest";
import { CONES, conePlace, isHalfCone, ladderOf } from "../cones/cone.ts";
import { CONE_TABLE } from "../cones/cone-table.ts";
import { type Curve, curveThrough } from "./curve.ts";
import { degreesApart, type HeatWork, heatWork } from "./heat-work.ts";
import { equivalentC } from "./ladder-position.ts";

/** A steady climb from the cold, then gone. */
const climb = (rate: number, topC: number): Curve =>
  curveThrough([
    [0, 20],
    [((topC - 20) / rate) * 60, topC],
  ]);
const cooled = (curve: Curve): Curve =>
  curveThrough([
    ...Array.from(curve.minutes, (minute, n) => [minute, curve.tempC[n] as number] as const),
    [(curve.minutes.at(-1) as number) + 120, (curve.tempC.at(-1) as number) - 500],
  ]);
const codes = (found: HeatWork): string[] => found.warnings.map((warning) => warning.code);

test("a climb to 1222 °C at 60 °C/h is cone 6, as the published table says", () => {
  const found = heatWork(climb(60, 1222.01));
  expect(found.coneDown).toBe("6");
  expect(found.next).toBe("7");
  expect(found.ladder).toBeCloseTo(27, 2);
  expect(found.equivalentC).toBeCloseTo(1222, 1);
  expect(found.peakC).toBe(1222.01);
  const six = found.cones[conePlace("6")];
  expect(six?.bendDeg).toBe(90);
  expect(six?.downAtMin).toBeCloseTo(1202, 1);
});

test("at its published end point every cone is down, the next one is not, and the ladder stands at its number", () => {
  for (const row of CONE_TABLE) {
    for (const [rate, tempC] of [
      [15, row.at15C],
      [60, row.at60C],
      [150, row.at150C],
    ] as const) {
      if (tempC === null) continue;
      const found = heatWork(climb(rate, tempC));
      expect(found.ladder).toBeCloseTo(ladderOf(row.cone), 6);
      if (!isHalfCone(row.cone)) expect(found.coneDown).toBe(row.cone);
    }
  }
});

test("between two cones the ladder climbs with the degrees", () => {
  // 1194.5 °C lies halfway from cone 5 (1186) to the half cone 5.5 (1203).
  const found = heatWork(climb(60, 1194.5));
  expect(found.coneDown).toBe("5");
  expect(found.next).toBe("6");
  expect(found.ladder).toBeCloseTo(26.25, 1);
  expect(found.towardNext).toBeCloseTo(found.ladder - 26, 12);
  let last = Number.NEGATIVE_INFINITY;
  for (let topC = 560; topC < 1400; topC += 7) {
    const { ladder } = heatWork(climb(60, topC));
    expect(ladder).toBeGreaterThanOrEqual(last);
    last = ladder;
  }
});

test("the ladder's end points are the table's, and degrees of heat work can be told apart", () => {
  expect(equivalentC(27)).toBe(1222);
  expect(equivalentC(26.5)).toBe(1203);
  expect(equivalentC(0)).toBe(586);
  expect(degreesApart(heatWork(climb(60, 1215)), heatWork(climb(60, 1205)))).toBeCloseTo(10, 0);
});

test("cooling counts: the same peak does more work when it cools as a kiln does", () => {
  const work = (found: HeatWork): number => found.cones[conePlace("6")]?.work ?? 0;
  const added = work(heatWork(cooled(climb(60, 1215)))) - work(heatWork(climb(60, 1215)));
  expect(added).toBeGreaterThan(0.1);
  expect(added).toBeLessThan(0.3);
});

test("a log read every second gives what one read every five minutes gives", () => {
  const sampled = (everyMin: number): HeatWork => {
    const corners = [
      [0, 20],
      [300, 1100],
      [420, 1220],
      [440, 1220],
      [600, 800],
    ] as const;
    const at = (minute: number): number => {
      const leg = corners.findIndex((corner) => corner[0] >= minute);
      const [from, to] = [corners[Math.max(0, leg - 1)] ?? corners[0], corners[leg] ?? corners[0]];
      return from[0] === to[0] ? to[1] : from[1] + ((minute - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
    };
    return heatWork(
      curveThrough(Array.from({ length: 600 / everyMin + 1 }, (_, n) => [n * everyMin, at(n * everyMin)])),
    );
  };
  expect(sampled(1 / 60).ladder).toBeCloseTo(sampled(5).ladder, 4);
});

test("a good log has no warnings; a poor one says where it fails", () => {
  expect(codes(heatWork(cooled(climb(60, 1222))))).toEqual([]);
  expect(codes(heatWork(climb(60, 1222)))).toContain("ends-hot");
  expect(codes(heatWork(cooled(climb(250, 1250))))).toContain("fast-rate");
  expect(codes(heatWork(cooled(climb(8, 1180))))).toContain("slow-rate");
  expect(codes(heatWork(cooled(climb(60, 500))))).toContain("beyond-the-table");
  expect(codes(heatWork(cooled(climb(60, 1500))))).toContain("beyond-the-table");
  expect(codes(heatWork(cooled(climb(60, 600))))).toContain("borrowed-energy");
  const held = curveThrough([
    [0, 20],
    [1100, 1120],
    [2900, 1120],
    [3100, 700],
  ]);
  expect(codes(heatWork(held))).toContain("below-published-range");
  const hotStart = curveThrough([
    [0, 900],
    [300, 1222],
    [500, 800],
  ]);
  expect(codes(heatWork(hotStart))).toContain("starts-hot");
  const sparse = curveThrough([
    [0, 20],
    [1100, 1170],
    [1160, 1225],
    [1300, 800],
  ]);
  expect(codes(heatWork(sparse))).toContain("coarse-readings");
});

test("below cone 022 nothing is down, above cone 14 nothing is next", () => {
  const cold = heatWork(climb(60, 300));
  expect([cold.coneDown, cold.next, cold.ladder]).toEqual([null, "022", -1]);
  const hot = heatWork(climb(60, 1500));
  expect([hot.coneDown, hot.next, hot.towardNext, hot.ladder]).toEqual(["14", null, 0, 35]);
  expect(hot.cones.map((each) => each.cone)).toEqual(CONES);
});

test("very slow firing lets cones pass one another: the order is kept, and it says so", () => {
  // Cone 014 has the smaller energy: below 15 °C/h its end point sinks faster than that of cone 015.
  const slow = Array.from({ length: 40 }, (_, n) => heatWork(climb(1, 640 + 2 * n)));
  const crossed = slow.filter((found) => codes(found).includes("order-crossed"));
  expect(crossed.length).toBeGreaterThan(0);
  for (const found of crossed) {
    const down = found.coneDown === null ? -1 : conePlace(found.coneDown);
    found.cones.slice(0, down + 1).forEach((each) => {
      expect(each.work).toBeGreaterThanOrEqual(1);
    });
  }
});

test.each([
  [[0], [20], /found 1 readings; expected at least two/],
  [[0, 1], [20, 2232], /found 2232 °C; expected a kiln's temperature in °C/],
  [[5, 1], [20, 30], /minutes\[1\]: found 1; expected a time at or after/],
  [[0, 1], [20, Number.NaN], /tempC\[1\]/],
])("refuses a curve that is none", (minutes, tempC, message) => {
  expect(() => heatWork({ minutes: Float64Array.from(minutes), tempC: Float64Array.from(tempC) })).toThrow(message);
});
