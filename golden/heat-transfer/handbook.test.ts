import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { erf, erfc, scaledErfc } from "./error-function.ts";
import { handbookCases } from "./handbook-cases.ts";

interface Case {
  readonly id: string;
  readonly source: string;
  readonly exact: number;
  readonly halfDigit: number;
  readonly unit: string;
}
const { cases } = JSON.parse(readFileSync(join(import.meta.dirname, "cases.json"), "utf8")) as { cases: Case[] };
const results = handbookCases();

test("the error function is that of the tables (Abramowitz and Stegun, table 7.1)", () => {
  // Ten digits, from memory.
  for (const [x, value] of [
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [1.5, 0.9661051465],
    [2, 0.995322265],
  ] as const) {
    expect(Math.abs(erf(x) - value)).toBeLessThan(6e-11);
  }
  expect(erf(-1)).toBe(-erf(1));
  // Series and continued fraction meet where one hands over to the other, and the definition's own derivative holds there.
  expect(Math.abs(1 - erf(2 - 1e-9) - erfc(2) - 2e-9 * 0.5 * (2 / Math.sqrt(Math.PI)) * Math.exp(-4))).toBeLessThan(
    1e-14,
  );
  expect(Math.abs(scaledErfc(2) * Math.exp(-4) + erf(2) - 1)).toBeLessThan(1e-15);
});

test("every case has a result, and every result its case", () => {
  expect(results.map((each) => each.id).sort()).toEqual(cases.map((each) => each.id).sort());
});

for (const known of cases) {
  test(`${known.id}: ${known.source}`, () => {
    const result = results.find((each) => each.id === known.id);
    if (result === undefined) throw new Error(`no result for ${known.id}`);
    console.log(
      `${known.id}: solver ${result.found.toPrecision(7)}, exact ${result.exact.toPrecision(7)} ${result.unit}; worst error ${result.error.toExponential(1)} ${result.errorUnit} of ${result.most} allowed`,
    );
    // The closed form, reckoned here, is that of the independent program whose digits are on file.
    expect(result.unit).toBe(known.unit);
    expect(Math.abs(result.exact - known.exact)).toBeLessThanOrEqual(known.halfDigit);
    expect(result.error).toBeLessThanOrEqual(result.most);
  });
}
