import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BadInput } from "./bad-input.ts";
import { formatLength, formatLengthNumber, lengthsInUnits, parseLengthMm } from "./length.ts";

// The inch is exactly 25.4 mm (International Yard and Pound Agreement, 1959); the foot twelve of them.
const INCH_MM = 25.4;

describe("reading a length as a potter types it", () => {
  test.each([
    ["3 1/2 in", 3.5 * INCH_MM],
    ['3½"', 3.5 * INCH_MM],
    ["3½”", 3.5 * INCH_MM],
    ["3-1/2 inches", 3.5 * INCH_MM],
    ["½ in", 0.5 * INCH_MM],
    ["1/16 in", INCH_MM / 16],
    ["1' 1/2\"", 12.5 * INCH_MM],
    [`1' 3"`, 15 * INCH_MM],
    ["1 ft 3 1/4 in", 15.25 * INCH_MM],
    ["9 cm", 90],
    ["9,5 cm", 95],
    ["9.5cm", 95],
    ["90mm", 90],
    [" 90 MM. ", 90],
    [".5 in", 0.5 * INCH_MM],
    ["1.2 m", 1200],
    ["0 mm", 0],
  ])("%s", (text, mm) => {
    expect(parseLengthMm(text)).toBeCloseTo(mm, 9);
  });

  test.each([
    "",
    "  ",
    "wide",
    "3",
    "3 1/0 in",
    "31/2/2 in",
    "31/2 in",
    "-1/2 in",
    "-3 in",
    "3 in 1 ft",
    "3 in 2 in",
    "3.5 1/2 in",
    "9 parsecs",
    "NaN mm",
    "1e3 mm",
    "3 in extra",
  ])("refuses %j, naming the field", (text) => {
    expect(() => parseLengthMm(text, null, "ware[2].height")).toThrow(BadInput);
    expect(() => parseLengthMm(text, null, "ware[2].height")).toThrow(/ware\[2\]\.height.*expected a length/);
  });

  test("takes a bare number only where its unit is known", () => {
    expect(parseLengthMm("9", "cm")).toBe(90);
    expect(parseLengthMm("3 1/2", "in")).toBeCloseTo(3.5 * INCH_MM, 9);
    expect(() => parseLengthMm("9")).toThrow(/with its unit/);
  });

  test("does not lend the bare unit to what follows a unit", () => {
    expect(() => parseLengthMm("1 ft 3", "in")).toThrow(BadInput);
  });
});

describe("printing a length in her units", () => {
  test.each([
    [16.2, "16 mm", "5/8 in"],
    [25.4, "25 mm", "1 in"],
    [0, "0 mm", "0 in"],
    [-0.2, "0 mm", "0 in"],
    [-6.35, "-6 mm", "-1/4 in"],
    [100, "100 mm", "3 15/16 in"],
    [430, "430 mm", "16 15/16 in"],
  ])("%d", (mm, metric, inches) => {
    expect(formatLength(mm, "metric")).toBe(metric);
    expect(formatLength(mm, "inches")).toBe(inches);
  });

  test("prints the number alone for a drawing that names the unit once", () => {
    expect(formatLengthNumber(125, "metric")).toBe("125");
    expect(formatLengthNumber(127, "inches")).toBe("5");
  });

  test("what is printed is read back to half a millimetre, or to half a sixteenth of an inch", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (mm) => {
        expect(Math.abs(parseLengthMm(formatLength(mm, "metric")) - mm)).toBeLessThanOrEqual(0.5 + 1e-9);
        expect(Math.abs(parseLengthMm(formatLength(mm, "inches")) - mm)).toBeLessThanOrEqual(INCH_MM / 32 + 1e-9);
      }),
    );
  });

  test("sixteenths alone are read back exactly", () => {
    for (let sixteenths = 1; sixteenths < 16; sixteenths += 1) {
      const mm = (sixteenths * INCH_MM) / 16;
      expect(parseLengthMm(formatLength(mm, "inches"))).toBeCloseTo(mm, 9);
    }
  });

  test("what is printed does not change when it is read and printed again", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), fc.constantFrom("metric", "inches"), (mm, units) => {
        const text = formatLength(mm, units);
        expect(formatLength(parseLengthMm(text), units)).toBe(text);
      }),
    );
  });
});

describe("putting a sentence into her units", () => {
  test("turns millimetres and centimetres into inches and leaves the rest", () => {
    expect(lengthsInUnits("too tall by 18 mm on 2 levels; it needs 12.7 cm", "inches")).toBe(
      "too tall by 11/16 in on 2 levels; it needs 5 in",
    );
  });

  test("leaves metric sentences as they are", () => {
    expect(lengthsInUnits("too tall by 18 mm", "metric")).toBe("too tall by 18 mm");
  });
});
