import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "./spread.ts";

const places = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 12 })), { minLength: 1, maxLength: 8 })
  .map((pairs) => ({
    wanted: pairs.map(([place]) => place).sort((a, b) => a - b),
    sizes: pairs.map(([, size]) => size),
  }));
const moved = (wanted: readonly number[], got: readonly number[]): number =>
  wanted.reduce((sum, place, i) => sum + (place - (got[i] as number)) ** 2, 0);
const apart = (got: readonly number[], sizes: readonly number[]): boolean =>
  got.every(
    (place, i) =>
      i === 0 || place - (got[i - 1] as number) >= ((sizes[i] as number) + (sizes[i - 1] as number)) / 2 - 1e-9,
  );

describe("spreading labels along a line", () => {
  test("none overlap, all stay within the line, order is kept", () => {
    fc.assert(
      fc.property(places, ({ wanted, sizes }) => {
        const got = spread(wanted, sizes, 0, 110);
        expect(apart(got, sizes)).toBe(true);
        expect(got.every((place, i) => place - (sizes[i] as number) / 2 >= -1e-9)).toBe(true);
        expect(got.every((place, i) => place + (sizes[i] as number) / 2 <= 110 + 1e-9)).toBe(true);
      }),
    );
  });

  test("labels that have room stay where they are", () => {
    expect(spread([10, 30, 80], [5, 5, 5], 0, 100)).toEqual([10, 30, 80]);
  });

  test("two that want one place part evenly", () => {
    expect(spread([50, 50], [10, 10], 0, 100)).toEqual([45, 55]);
  });

  test("no small shift of a group of labels does better", () => {
    fc.assert(
      fc.property(
        places,
        fc.nat(),
        fc.nat(),
        fc.double({ min: -3, max: 3, noNaN: true }),
        ({ wanted, sizes }, a, b, by) => {
          const got = spread(wanted, sizes, 0, 110);
          const from = a % got.length;
          const to = from + (b % (got.length - from));
          const other = got.map((place, i) => (i >= from && i <= to ? place + by : place));
          const inside = other.every(
            (place, i) => place - (sizes[i] as number) / 2 >= 0 && place + (sizes[i] as number) / 2 <= 110,
          );
          if (inside && apart(other, sizes))
            expect(moved(wanted, other)).toBeGreaterThanOrEqual(moved(wanted, got) - 1e-6);
        },
      ),
    );
  });
});
