import { expect, test } from "vitest";
import { degreeDifference, likelySpan, parameterWords, sureWords } from "./parameter-words.ts";

test("a value is told by how far it is from what was described", () => {
  expect(parameterWords("powerFactor", 0.94, 0.02, "C")).toBe("Elements: give 6 % less power than described");
  expect(parameterWords("wallFactor", 1.12, 0.05, "C")).toBe("Walls: let through 12 % more heat than described");
  expect(parameterWords("probeOffsetC", 5, 1, "F")).toBe("Probe: reads 9 °F too high");
  expect(parameterWords("probeOffsetC", -5, 1, "C")).toBe("Probe: reads 5 °C too low");
  expect(parameterWords("tilt", 0.06, 0.02, "C")).toMatch(/the top gets 6 % more power/);
});

test("what its spread does not tell from nothing is told as described", () => {
  expect(parameterWords("powerFactor", 1.03, 0.05, "C")).toBe(
    "Elements: give the power described, as far as can be told",
  );
  expect(parameterWords("probeOffsetC", 3, 4, "C")).toBe("Probe: reads true, as far as can be told");
});

test("a factor's spread is of its logarithm: 20 % of 1 reaches from 0.82 to 1.22", () => {
  const [least, most] = likelySpan("wallFactor", 1, 0.2);
  expect(least).toBeCloseTo(-0.1813, 4);
  expect(most).toBeCloseTo(0.2214, 4);
  expect(likelySpan("probeOffsetC", 3, 2)).toEqual([1, 5]);
});

test("how sure is never told as wholly sure", () => {
  expect(sureWords("powerFactor", 0.001, "C")).toBe("give or take 1 %");
  expect(sureWords("probeOffsetC", 0.01, "C")).toBe("give or take 0.5 °C");
  expect(sureWords("wallFactor", 0.4, "C")).toBe("give or take 49 %");
  expect(degreeDifference(-12.4, "C")).toBe("12 °C");
});
