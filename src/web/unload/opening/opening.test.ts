import { expect, test } from "vitest";
import { meterPair, usedKWh } from "./meter.ts";
import { OPENING_CAUTION, openingWords } from "./opening-words.ts";

const course = {
  startedAt: "2026-11-24T08:00:00.000Z",
  shutOffAt: "2026-11-24T18:00:00.000Z",
  endedAt: "2026-11-25T09:00:00.000Z",
};
const read = (at: string, kWh: number) => ({ at, kWh });
const early = read("2026-11-24T07:50:00.000Z", 4100);
const late = read("2026-11-25T09:10:00.000Z", 4141.3);

test("the first reading is before the firing, the last after it", () => {
  const pair = meterPair({ ...course, meterReadings: [early, read("2026-11-24T12:00:00.000Z", 4120), late] });
  expect(pair).toEqual({ before: early, after: late });
  expect(usedKWh(pair)).toBeCloseTo(41.3, 6);
});

test("one reading alone counts for the end it is nearer to, and says nothing of what was used", () => {
  expect(meterPair({ ...course, meterReadings: [early] })).toEqual({ before: early, after: null });
  expect(meterPair({ ...course, meterReadings: [late] })).toEqual({ before: null, after: late });
  expect(usedKWh(meterPair({ ...course, meterReadings: [late] }))).toBeNull();
  expect(meterPair({ ...course, meterReadings: [] })).toEqual({ before: null, after: null });
});

test("opening warns above the temperatures of its own caution", () => {
  // Lid at 120 °C or less, ware at 50 °C or less: trade pages and common practice, as the caution says.
  expect(OPENING_CAUTION?.text("metric")).toMatch(/crack the lid at 120 °C .* unload at 50 °C/);
  expect([121, 120, 51, 50].map((celsius) => openingWords(celsius).kind)).toEqual(["breaks", "mind", "mind", "keeps"]);
});
