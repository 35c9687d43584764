import { expect, test } from "vitest";
import { Sharpness } from "./sharpness.ts";

/** Pictures so far apart, one after the other; the last one's sharpness. */
const turn = (sharpness: Sharpness, betweenMs: number, pictures: number): number => {
  let ratio = 0;
  for (let i = 0; i < pictures; i += 1) ratio = sharpness.whileTurning(i * betweenMs);
  return ratio;
};

test("a quick machine draws every dot, turning or not", () => {
  const sharpness = new Sharpness(2);
  expect(turn(sharpness, 16, 100)).toBe(2);
  expect(sharpness.standing()).toBe(2);
});

test("a slow one draws fewer while turning, never less than half of the screen's, and all of them standing", () => {
  const sharpness = new Sharpness(2);
  // Twice as long as it may take: half the dots, which is a share of √½ each way.
  expect(turn(sharpness, 100, 3)).toBeCloseTo(Math.SQRT2, 9);
  expect(turn(sharpness, 120, 100)).toBe(0.5);
  expect(sharpness.standing()).toBe(2);
});

test("one late picture among quick ones costs nothing, nor does a rest", () => {
  const sharpness = new Sharpness(1);
  turn(sharpness, 16, 10);
  sharpness.whileTurning(400);
  sharpness.whileTurning(416);
  expect(sharpness.whileTurning(432)).toBe(1);
  for (const nowMs of [10_000, 20_000, 30_000, 40_000]) expect(sharpness.whileTurning(nowMs)).toBe(1);
});
