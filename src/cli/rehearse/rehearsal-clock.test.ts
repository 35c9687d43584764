import { expect, test } from "vitest";
import { RehearsalClock } from "./rehearsal-clock.ts";

const DAY_MS = 24 * 60 * 60_000;

test("it never tells a moment that is still to come, and has caught up when the firing is over", () => {
  const began = 1_000_000 * DAY_MS;
  let world = began;
  const clock = new RehearsalClock(600, DAY_MS, () => world);
  const first = clock.nowMs();
  clock.letGo();
  let before = first;
  for (let i = 0; i < 200; i++) {
    world += 1000;
    const now = clock.nowMs();
    expect(now).toBeLessThanOrEqual(world);
    expect(now).toBeGreaterThanOrEqual(before);
    before = now;
  }
  // A day, six hundred times as fast, takes 144 s.
  world = began + 100_000;
  expect(clock.nowMs() - first).toBe(100_000 * 600);
  world = began + 144_001;
  expect(clock.nowMs()).toBe(world);
  world += DAY_MS;
  expect(clock.nowMs()).toBe(world);
});

test("it waits for its kiln, and makes up for it afterwards", () => {
  let world = 1_000_000 * DAY_MS;
  const clock = new RehearsalClock(600, DAY_MS, () => world);
  const first = clock.nowMs();
  world += 10_000;
  expect(clock.nowMs()).toBe(first);
  clock.mayGoTo(first + 120_000);
  expect(clock.nowMs()).toBe(first + 120_000);
  clock.mayGoTo(first);
  expect(clock.nowMs()).toBe(first + 120_000);
  expect(clock.wantedMs()).toBe(first + 6_000_000);
  clock.letGo();
  expect(clock.nowMs()).toBe(first + 6_000_000);
});

test("at the world's own speed it is the world's clock", () => {
  let world = 5 * DAY_MS;
  const clock = new RehearsalClock(1, DAY_MS, () => world);
  expect(clock.nowMs()).toBe(5 * DAY_MS);
  clock.letGo();
  world += 1234;
  expect(clock.nowMs()).toBe(5 * DAY_MS + 1234);
});
