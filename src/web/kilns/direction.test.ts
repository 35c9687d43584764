import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockText } from "../../sheets/clock-direction.ts";
import { directionText, readDirection } from "./direction.ts";

describe("a direction on the wall", () => {
  test.each([
    [0, "3 o’clock"],
    [90, "12 o’clock"],
    [180, "9 o’clock"],
    [270, "6 o’clock"],
    [60, "1 o’clock"],
    [288, "5:24"],
    [330, "4 o’clock"],
    [22.5, "2:15"],
    [-30, "4 o’clock"],
  ])("at %d° is said as %s, and read back", (angleDeg, text) => {
    expect(directionText(angleDeg)).toBe(text);
    expect(readDirection(text)).toBeCloseTo((angleDeg + 360) % 360, 9);
  });

  test.each([
    ["4", 330],
    ["4.5", 315],
    ["4,5", 315],
    ["12:30", 75],
    ["4 o'clock", 330],
    ["4 oclock", 330],
    ["330°", 330],
    ["-30 deg", 330],
    ["720 degrees", 0],
  ])("typed as %s is %d°", (text, angleDeg) => expect(readDirection(text)).toBeCloseTo(angleDeg, 9));

  test.each(["", "13", "4:60", "4:3", "north", "4 in", "0x4", "4:30:00"])("%j is none", (text) =>
    expect(readDirection(text)).toBeNull(),
  );

  test("of every whole degree comes back as it was, and agrees with the printed sheet's half hours", () => {
    const every = fc.property(fc.integer({ min: 0, max: 359 }), (deg) => {
      expect(readDirection(directionText(deg))).toBeCloseTo(deg, 9);
      if (deg % 15 === 0) expect(directionText(deg)).toBe(clockText(deg));
    });
    fc.assert(every);
  });
});
