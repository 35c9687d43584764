import { expect, test } from "vitest";
import { readSignedLength, signedLengthText } from "./signed-length.ts";

test("a place to the other side is typed with a minus of any kind", () => {
  for (const minus of ["-", "−", "–"])
    expect(readSignedLength(`${minus}3 1/2 in`, "metric").value).toBeCloseTo(-88.9, 9);
  expect(readSignedLength("12,5", "metric")).toEqual({ value: 12.5, problem: null });
  expect(readSignedLength("-2", "inches").value).toBeCloseTo(-50.8, 9);
});

test("what is no length is said to be none", () => {
  expect(readSignedLength("", "metric").problem).not.toBeNull();
  expect(readSignedLength("far", "metric").problem).toMatch(/not a length/);
});

test("what is shown can be read again", () => {
  for (const mm of [0, 7, -120]) expect(readSignedLength(signedLengthText(mm, "metric"), "metric").value).toBe(mm);
});
