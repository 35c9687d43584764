import { expect, test } from "vitest";
import type { Programme } from "../firing/programme/programme.ts";
import { readTariff } from "../firing/tariff/tariff.ts";
import { handMadeLoad } from "../sheets/testing/sheet-cases.ts";
import { firingSheet } from "./firing-sheet.ts";
import { firingStart } from "./firing-start.ts";
import { foretell } from "./foretell.ts";

const { request, plan } = handMadeLoad();
const programme: Programme = {
  format: "programme/1",
  name: "cone 6",
  cone: "6",
  kind: "glaze",
  segments: [
    { rateCPerHour: 150, targetC: 1120, holdMin: 0 },
    { rateCPerHour: 60, targetC: 1222, holdMin: 5 },
  ],
};
const foretold = foretell(request, plan, programme, { roomC: 20 });
const { prediction } = foretold;
const sheet = firingSheet(request, programme, foretold, { units: "C", pricePerKWh: 0.3 });

test("carries the prediction's own figures, level by level", () => {
  expect(sheet).toMatchObject({ kiln: request.kiln.name, hours: prediction.hours, kWh: prediction.kWh });
  expect(sheet.levels.map(({ level, peakC, offsetC }) => ({ level, peakC, offsetC }))).toEqual(
    prediction.levels.map(({ level, peakC, offsetC }) => ({ level, peakC, offsetC })),
  );
  for (const [i, { cone }] of sheet.levels.entries()) {
    expect(cone).toMatch(new RegExp(`^cone ${prediction.levels[i]?.coneDown} down`));
  }
  expect(sheet.advice).toEqual(foretold.advice);
  expect(sheet.troubles).toEqual(prediction.troubles);
  expect(sheet.notes).toEqual([...foretold.assumed, ...prediction.warnings]);
});

test("cooling is told from the start, not from shut-off, and gets later as it gets cooler", () => {
  const hours = sheet.coolHours.map((each) => each.hours as number);
  expect(hours[0]).toBeCloseTo(prediction.hours + (prediction.coolHours["200"] as number), 12);
  expect([...hours].sort((a, b) => a - b)).toEqual(hours);
});

test("the looks are in order and none comes after shut-off, whose minute is the last", () => {
  const minutes = sheet.looks.map((look) => look.minutes);
  expect([...minutes].sort((a, b) => a - b)).toEqual(minutes);
  expect(minutes.at(-1)).toBe(prediction.firing.shutOffMin);
  expect(sheet.looks.at(-1)?.what).toMatch(/shut off/);
  expect(sheet.looks.some(({ what }) => /cone 6 is the one to watch/.test(what))).toBe(true);
});

test("the chart holds the last whole cones to fall, on the probe's curve", () => {
  expect(sheet.chart.cones.length).toBeGreaterThan(0);
  expect(sheet.chart.cones.length).toBeLessThanOrEqual(5);
  for (const { cone, downAtMin, tempC } of sheet.chart.cones) {
    expect(cone).not.toMatch(/\.5/);
    const after = prediction.firing.minutes.findIndex((minute) => minute >= downAtMin);
    const [a, b] = [prediction.firing.probeC[after - 1] as number, prediction.firing.probeC[after] as number];
    expect(tempC).toBeGreaterThanOrEqual(Math.min(a, b));
    expect(tempC).toBeLessThanOrEqual(Math.max(a, b));
  }
  expect(sheet.chart.levels).toHaveLength(plan.levels.length);
  expect(sheet.chart.untilMin).toBeGreaterThan(prediction.firing.shutOffMin);
});

test("the cost is by the flat price, by the tariff where one is given, or left out", () => {
  expect(sheet.cost).toBe(`${(0.3 * prediction.kWh).toFixed(2)} at 0.3 a kWh`);
  expect(firingSheet(request, programme, foretold, { units: "C", pricePerKWh: null }).cost).toBeNull();
  const tariff = readTariff({ format: "tariff/1", name: "flat", timeZone: "UTC", currency: "GBP", pricePerKWh: 0.25 });
  const start = firingStart(prediction, tariff, { start: "2026-11-26T18:00" });
  const costed = firingSheet(request, programme, foretold, { units: "C", pricePerKWh: null, start });
  expect(costed.cost).toBe(`${(0.25 * prediction.kWh).toFixed(2)} GBP by its tariff`);
});

test("keyed in as °F the table is in °F", () => {
  const fahrenheit = firingSheet(request, programme, foretold, { units: "F", pricePerKWh: null });
  // 1222 °C is 2231.6 °F, and a peak is rounded up.
  expect(fahrenheit.keyIn.map((line) => line.target)).toEqual([2048, 2232]);
  expect(sheet.keyIn.map((line) => line.target)).toEqual([1120, 1222]);
});
