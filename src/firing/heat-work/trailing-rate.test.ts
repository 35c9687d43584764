import fc from "fast-check";
import { expect, test } from "vitest";
import { curveThrough } from "./curve.ts";
import { ratePlace, trailingRates } from "./trailing-rate.ts";

/** The same by looking back from every point, one step after another. */
function lookedBack(minutes: readonly number[], tempC: readonly number[], n: number): number | null {
  const wanted = (tempC[n] as number) - 100;
  for (let m = n - 1; m >= 0; m--) {
    const low = tempC[m] as number;
    if (low > wanted) continue;
    const share = (wanted - low) / ((tempC[m + 1] as number) - low);
    const crossed = (minutes[m] as number) + share * ((minutes[m + 1] as number) - (minutes[m] as number));
    return 100 / (((minutes[n] as number) - crossed) / 60);
  }
  return null;
}

test("is the rate since the curve last stood 100 °C lower, on any curve", () => {
  const legs = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 1300 })), {
    minLength: 3,
    maxLength: 60,
  });
  fc.assert(
    fc.property(legs, (steps) => {
      let minute = 0;
      const corners = steps.map(([took, celsius]) => {
        minute += took;
        return [minute, celsius] as const;
      });
      const minutes = corners.map((corner) => corner[0]);
      const tempC = corners.map((corner) => corner[1]);
      const rates = trailingRates(curveThrough(corners));
      for (let n = 1; n < corners.length; n++) {
        const expected = lookedBack(minutes, tempC, n);
        if (expected !== null) expect((rates[n] as number) / expected).toBeCloseTo(1, 9);
        expect(rates[n]).toBeGreaterThan(0);
      }
    }),
  );
});

test("a steady climb has its own rate, a hold lowers it, a faster start is forgotten after 100 °C", () => {
  const rates = trailingRates(
    curveThrough([
      [0, 20],
      [60, 320],
      [160, 420],
      [220, 420],
    ]),
  );
  expect(rates[2]).toBeCloseTo(60, 9);
  expect(rates[3]).toBeCloseTo(100 / (160 / 60), 9);
});

test("published rates stand at 0, 1 and 2, others between in their logarithm, none beyond", () => {
  expect([1, 15, 60, 150, 900].map(ratePlace)).toEqual([0, 0, 1, 2, 2]);
  expect(ratePlace(30)).toBeCloseTo(0.5, 12);
});
