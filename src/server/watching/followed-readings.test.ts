import { expect, test } from "vitest";
import { FollowedReadings } from "./followed-readings.ts";

const START_MS = Date.parse("2026-11-25T06:00:00.000Z");
const at = (seconds: number): string => new Date(START_MS + seconds * 1000).toISOString();
const series = (probe: string, ...readings: readonly (readonly [seconds: number, tempC: number])[]) => ({
  probe,
  readings: readings.map(([seconds, tempC]) => ({ at: at(seconds), tempC })),
});
const seconds = (followed: FollowedReadings, given: ReturnType<typeof series>) =>
  [...(followed.take(given)?.minutes ?? [])].map((minute) => Math.round(minute * 60_000) / 1000);

test("are put in order and thinned to one a second; late ones, and those from before the start, are left", () => {
  const followed = new FollowedReadings(START_MS, "lid");
  expect(seconds(followed, series("lid", [2, 22], [-5, 19], [1, 21], [1.4, 21.5], [2, 22]))).toEqual([1, 2]);
  expect(seconds(followed, series("lid", [1.9, 20], [2.5, 23]))).toEqual([]);
  expect(followed.latest).toEqual({ at: at(2.5), tempC: 23, probe: "lid" });
  expect(seconds(followed, series("lid", [3, 24]))).toEqual([3]);
});

test("are of one probe, the first that reads; where the one that should be followed reads after all, that is told", () => {
  const followed = new FollowedReadings(START_MS, "lid");
  expect(seconds(followed, series("floor", [1, 20]))).toEqual([1]);
  expect([followed.isOfAnother("lid"), followed.isOfAnother("floor"), followed.isOfAnother("wall")]).toEqual([
    true,
    false,
    false,
  ]);
  expect(seconds(followed, series("wall", [2, 20]))).toEqual([]);
  expect([followed.probe, followed.latest?.probe]).toEqual(["floor", "floor"]);
});
