import { expect, test } from "vitest";
import { rehearsalClock } from "./rehearsal-clock.ts";

const DAY_MS = 24 * 60 * 60_000;

test("it never tells a moment that is still to come, and has caught up when the firing is over", () => {
  let world = 1_000_000 * DAY_MS;
  const began = world;
  const clock = rehearsalClock(600, DAY_MS, () => world);
  const first = clock();
  let before = first;
  for (let i = 0; i < 200; i++) {
    world += 1000;
    const now = clock();
    expect(now).toBeLessThanOrEqual(world);
    expect(now).toBeGreaterThanOrEqual(before);
    before = now;
  }
  // A day, six hundred times as fast, takes 144 s.
  world = began + 100_000;
  expect(clock() - first).toBe(100_000 * 600);
  world = began + 144_000;
  expect(clock() - first).toBeCloseTo(DAY_MS, -1);
  expect(clock()).toBe(world);
  world += DAY_MS;
  expect(clock()).toBe(world);
});

test("at the world's own speed it is the world's clock", () => {
  const clock = rehearsalClock(1, DAY_MS, () => 5 * DAY_MS);
  expect(clock()).toBe(5 * DAY_MS);
});
