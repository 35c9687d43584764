import { expect, test } from "vitest";
import { CLAYS, type ClayName } from "./clay-strength.ts";
import { SHIELDED_LENGTH_M, safeRate } from "./safe-rate.ts";

const rate = (clay: ClayName, lengthM: number, direction: "heating" | "cooling", temperatureC: number): number =>
  safeRate({ clay, lengthM, direction, temperatureC }).rateCPerHour;

test("comes out as a prototype did, within the spread of what is known of clay", () => {
  // A prototype's figures, with one diffusivity for all temperatures: stoneware 8 mm 37,800 °C/h; over 0.1 m 60, in the
  // 573 °C band 18; dry green 12 mm heated 7200.
  const cases = [
    [rate("stoneware", 0.004, "cooling", 400), 37_800],
    [rate("stoneware", SHIELDED_LENGTH_M, "cooling", 400), 60],
    [rate("stoneware", SHIELDED_LENGTH_M, "cooling", 573), 18],
    [rate("green clay", 0.006, "heating", 100), 7200],
  ] as const;
  console.log(cases.map(([found, wanted]) => `${found.toFixed(0)} °C/h; prototype ${wanted}`).join("\n"));
  for (const [found, wanted] of cases) expect(Math.abs(Math.log(found / wanted))).toBeLessThan(Math.log(1.4));
});

test("the trade's 50 °C/h through 573 °C needs a length of about a tenth of a metre, not a wall", () => {
  // 50 °C/h: Fortuna, Sanitaryware 2000.
  expect(rate("stoneware", 0.006, "cooling", 573)).toBeGreaterThan(50 * 50);
  expect(rate("stoneware", SHIELDED_LENGTH_M, "cooling", 573)).toBeLessThan(50);
  expect(rate("stoneware", SHIELDED_LENGTH_M / 2, "cooling", 573)).toBeGreaterThan(50);
});

test("twice the length bears a quarter of the rate; heating bears twice what cooling does", () => {
  for (const clay of Object.keys(CLAYS) as ClayName[]) {
    expect(rate(clay, 0.02, "cooling", 700) / rate(clay, 0.04, "cooling", 700)).toBeCloseTo(4, 9);
    expect(rate(clay, 0.02, "heating", 700) / rate(clay, 0.02, "cooling", 700)).toBeCloseTo(2, 9);
  }
});

test("the difference across the length at that rate is what the formula says", () => {
  // Δ = r L²/(2a) and r = 3a(1−ν)σ/(EαL²) make Δ = 1.5 (1−ν) σ/(E α): 120 °C for these numbers of stoneware.
  const { differenceC } = safeRate({ clay: "stoneware", lengthM: 0.03, direction: "cooling", temperatureC: 900 });
  expect(differenceC).toBeCloseTo((1.5 * 0.8 * 30e6) / (50e9 * 6e-6), 6);
});

test.each([0, -1, 2, Number.NaN])("refuses a length of %d m", (lengthM) => {
  expect(() => rate("stoneware", lengthM, "cooling", 20)).toThrow(/lengthM/);
});
