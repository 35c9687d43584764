import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { backupsToKeep } from "./backups-to-keep.ts";

const DAY_MS = 24 * 60 * 60 * 1000;
const NOW = "2026-11-25T12:00:00.000Z";
const ago = (days: number): string => new Date(Date.parse(NOW) - days * DAY_MS).toISOString();
const ageDays = (time: string, now = NOW): number => (Date.parse(now) - Date.parse(time)) / DAY_MS;

describe("backups thinned by age", () => {
  test("keeps all of the last two days, hourly ones too", () => {
    const hourly = Array.from({ length: 48 }, (_, hour) => ago(hour / 24));
    expect(backupsToKeep(hourly, NOW)).toEqual(hourly);
  });

  test("of hourly backups over four years, keeps a few dozen, ever further apart", () => {
    const hourly = Array.from({ length: 4 * 365 * 24 }, (_, hour) => ago(hour / 24));
    const kept = backupsToKeep(hourly, NOW).map((time) => ageDays(time));
    const between = (young: number, old: number) => kept.filter((age) => age >= young && age < old).length;
    expect(between(0, 2)).toBe(48);
    // 12 whole days, 10 whole weeks, 23 stretches of four weeks; one more where a stretch is cut by the age.
    for (const [young, old, span] of [
      [2, 14, 1],
      [14, 84, 7],
      [84, 728, 28],
      [728, 1460, 364],
    ] as const) {
      const whole = (old - young) / span;
      expect(between(young, old)).toBeGreaterThanOrEqual(Math.floor(whole));
      expect(between(young, old)).toBeLessThanOrEqual(Math.ceil(whole) + 1);
    }
  });

  test("the newest stays, however old; so does one from the future; the same time twice is one", () => {
    expect(backupsToKeep([ago(5000)], NOW)).toEqual([ago(5000)]);
    expect(backupsToKeep([ago(-3), ago(3), ago(3)], NOW)).toEqual([ago(-3), ago(3)]);
    expect(backupsToKeep([], NOW)).toEqual([]);
  });

  const spanOf = (age: number): number => (age < 2 ? 0 : age < 14 ? 1 : age < 84 ? 7 : age < 728 ? 28 : 364);
  const expectNoGap = (made: readonly string[], kept: readonly string[]): void => {
    for (const time of made) {
      const age = ageDays(time);
      const gap = Math.min(...kept.map((each) => Math.abs(ageDays(each) - age)));
      expect(gap).toBeLessThanOrEqual(spanOf(age));
    }
  };
  const hours = fc.array(fc.integer({ min: 0, max: 1500 * 24 }), { minLength: 1, maxLength: 200 });

  test("no backup is further from a kept one than the span of its age", () => {
    const once = fc.property(hours, (hoursAgo) => {
      const made = hoursAgo.map((each) => ago(each / 24));
      expectNoGap(made, backupsToKeep(made, NOW));
    });
    fc.assert(once, { seed: 7 });
  });

  test("nor when they were thinned again and again on the way", () => {
    const often = fc.property(hours, fc.integer({ min: 1, max: 20 }), (hoursAgo, stepDays) => {
      const made = hoursAgo.map((each) => ago(each / 24));
      let kept: string[] = [];
      for (let day = 1500; day > 0; day -= stepDays) {
        const [before, now] = [ago(day + stepDays), ago(day)];
        kept = backupsToKeep([...kept, ...made.filter((time) => time > before && time <= now)], now);
      }
      expectNoGap(made, backupsToKeep([...kept, ...made.filter((time) => time > ago(stepDays))], NOW));
    });
    fc.assert(often, { seed: 7, numRuns: 40 });
  });
});
