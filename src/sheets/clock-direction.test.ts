import fc from "fast-check";
import { expect, test } from "vitest";
import { clockList, clockText, listText } from "./clock-direction.ts";

test.each([
  [90, "12 o’clock"],
  [0, "3 o’clock"],
  [-90, "6 o’clock"],
  [270, "6 o’clock"],
  [180, "9 o’clock"],
  [60, "1 o’clock"],
  [45, "1:30"],
  [83, "12 o’clock"],
  [82, "12:30"],
  [97.6, "11:30"],
  [3690, "12 o’clock"],
])("%d degrees is %s", (deg, text) => {
  expect(clockText(deg)).toBe(text);
});

test("the direction told is never more than a quarter of an hour's angle off", () => {
  fc.assert(
    fc.property(fc.double({ min: -3600, max: 3600, noNaN: true }), (deg) => {
      const [, hour, half] = /^(\d+)(:30)?/.exec(clockText(deg)) ?? [];
      const told = 90 - 30 * (Number(hour) + (half ? 0.5 : 0));
      const apart = Math.abs(((((deg - told) % 360) + 540) % 360) - 180);
      expect(apart).toBeLessThanOrEqual(7.5 + 1e-9);
    }),
  );
});

test("lists go round the clock", () => {
  expect(clockList([180, 60, -60])).toBe("1, 5 and 9 o’clock");
  expect(clockList([45, 0])).toBe("1:30 and 3 o’clock");
  expect(listText([])).toBe("");
  expect(listText(["a", "b", "c"])).toBe("a, b and c");
});
