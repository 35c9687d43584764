import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lengthText, readLengthText } from "./length-text.ts";
import { readNumberText } from "./number-text.ts";

describe("a field for lengths", () => {
  test("takes a bare number in her units and any unit that is written", () => {
    expect(readLengthText("90", "metric").value).toBe(90);
    expect(readLengthText("9 cm", "metric").value).toBe(90);
    // 3 1/2 in at 25.4 mm an inch (International yard and pound agreement, 1959) are 88.9 mm.
    expect(readLengthText("3 1/2", "inches").value).toBeCloseTo(88.9, 9);
    expect(readLengthText("3½ in", "metric").value).toBeCloseTo(88.9, 9);
    expect(readLengthText("90 mm", "inches").value).toBe(90);
  });

  test("nothing typed is no length and no mistake", () => {
    expect(readLengthText("  ", "metric")).toEqual({ value: null, problem: null });
  });

  test("what is no length is said in one sentence with what would do", () => {
    expect(readLengthText("wide", "metric")).toEqual({
      value: null,
      problem: "“wide” is not a length. Type such as 90, 9 cm or 3 1/2 in.",
    });
  });

  test("limits are said in her units", () => {
    expect(readLengthText("5", "metric", { minMm: 10 }).problem).toBe("At least 10 mm.");
    expect(readLengthText("40", "inches", { maxMm: 508 }).problem).toBe("At most 20 in.");
  });

  test("what it shows is read back to the half of its last digit", () => {
    const readsBack = fc.property(fc.double({ min: 0, max: 2000, noNaN: true }), (mm) => {
      for (const [units, off] of [
        ["metric", 0.5],
        ["inches", 25.4 / 32],
      ] as const) {
        const { value } = readLengthText(lengthText(mm, units), units);
        expect(Math.abs((value ?? Number.NaN) - mm)).toBeLessThanOrEqual(off + 1e-9);
      }
    });
    fc.assert(readsBack, { seed: 5 });
  });
});

describe("a field for numbers", () => {
  test("takes a comma for a point", () => {
    expect(readNumberText("2,5", {})).toEqual({ value: 2.5, problem: null });
  });

  test.each([
    ["six", {}, "“six” is not a number."],
    ["1e3", {}, "“1e3” is not a number."],
    ["-", {}, "“-” is not a number."],
    ["2.5", { isWhole: true }, "A whole number, please."],
    ["0", { min: 1 }, "At least 1."],
    ["11", { max: 10 }, "At most 10."],
  ])("says what is wrong with %j", (text, limits, problem) => {
    expect(readNumberText(text, limits)).toEqual({ value: null, problem });
  });
});
