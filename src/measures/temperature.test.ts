import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BadInput } from "./bad-input.ts";
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  formatRate,
  formatTemperature,
  parseTemperatureC,
} from "./temperature.ts";

describe("reading a temperature as a potter types it", () => {
  test.each([
    ["1222 °C", 1222],
    ["1222°C", 1222],
    ["1222C", 1222],
    ["1222 celsius", 1222],
    ["1222 degrees C", 1222],
    ["1222,5 °C", 1222.5],
    ["−10 °C", -10],
    // Fixed points of both scales: ice 0 °C = 32 °F, steam 100 °C = 212 °F, and the one reading they share, −40.
    ["32 F", 0],
    ["212 °F", 100],
    ["-40 F", -40],
    ["2232 F", 2200 / 1.8],
  ])("%s", (text, celsius) => {
    expect(parseTemperatureC(text)).toBeCloseTo(celsius, 9);
  });

  test.each(["", "hot", "1222", "1222 K", "cone 6", "-300 °C", "-460 F", "12 22 C", "NaN C"])(
    "refuses %j, naming the field",
    (text) => {
      expect(() => parseTemperatureC(text, null, "peak")).toThrow(BadInput);
      expect(() => parseTemperatureC(text, null, "peak")).toThrow(/peak.*expected a temperature/);
    },
  );

  test("takes a bare number only where its unit is known", () => {
    expect(parseTemperatureC("1222", "C")).toBe(1222);
    expect(parseTemperatureC("212", "F")).toBeCloseTo(100, 9);
  });

  test("a unit that is written wins over the bare one", () => {
    expect(parseTemperatureC("100 C", "F")).toBe(100);
  });
});

describe("printing a temperature", () => {
  test("in her units, to the whole degree", () => {
    expect(formatTemperature(1222, "C")).toBe("1222 °C");
    expect(formatTemperature(1222, "F")).toBe("2232 °F");
  });

  test("a rate has no zero point to shift", () => {
    expect(formatRate(100, "F")).toBe("180 °F/h");
    expect(formatRate(60, "C")).toBe("60 °C/h");
  });

  test("what is printed is read back to half a degree", () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 1500, noNaN: true }), (celsius) => {
        expect(Math.abs(parseTemperatureC(formatTemperature(celsius, "C")) - celsius)).toBeLessThanOrEqual(0.5 + 1e-9);
        expect(Math.abs(parseTemperatureC(formatTemperature(celsius, "F")) - celsius)).toBeLessThanOrEqual(
          0.5 / 1.8 + 1e-9,
        );
      }),
    );
  });

  test("the two scales undo each other", () => {
    fc.assert(
      fc.property(fc.double({ min: -273, max: 3000, noNaN: true }), (celsius) => {
        expect(celsiusFromFahrenheit(fahrenheitFromCelsius(celsius))).toBeCloseTo(celsius, 9);
      }),
    );
  });
});
