import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dayAfter, dayOf, daysBetween } from "./calendar-day.ts";
import { DUE_STRETCHES, dueStretch, dueWords } from "./due-words.ts";

const TODAY = "2026-11-25";
const at = (days: number): string => dayAfter(TODAY, days);

describe("a due day in words", () => {
  test.each([
    [0, "today"],
    [1, "tomorrow"],
    [3, "in 3 days"],
    [13, "in 13 days"],
    [14, "in 2 weeks"],
    [60, "in 8 weeks"],
    [61, "in 2 months"],
    [-1, "1 day late"],
    [-2, "2 days late"],
    [-15, "2 weeks late"],
    [-70, "2 months late"],
  ])("%i days from today is %s", (days, words) => {
    expect(dueWords(at(days), TODAY)).toBe(words);
  });

  test("without a day there is none to say", () => {
    expect(dueWords(null, TODAY)).toBe("no day");
  });

  test("every day lies in one stretch, and stretches follow one another", () => {
    const order = (days: number): number => DUE_STRETCHES.indexOf(dueStretch(at(days), TODAY));
    expect([-1, 0, 7, 8, 30, 31].map((days) => dueStretch(at(days), TODAY))).toEqual([
      "late",
      "week",
      "week",
      "month",
      "month",
      "later",
    ]);
    const day = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(day, day, (a, b) => {
        expect(order(Math.min(a, b))).toBeLessThanOrEqual(order(Math.max(a, b)));
      }),
    );
  });
});

describe("days on the calendar", () => {
  test("leap days and years' ends are counted", () => {
    expect(daysBetween("2028-02-28", "2028-03-01")).toBe(2);
    expect(daysBetween("2026-12-31", "2027-01-01")).toBe(1);
    expect(dayAfter("2027-02-28", 1)).toBe("2027-03-01");
  });

  test("today is this device's day, not that of Greenwich", () => {
    expect(dayOf(new Date(2026, 10, 5, 0, 30))).toBe("2026-11-05");
    expect(dayOf(new Date(2026, 10, 5, 23, 30))).toBe("2026-11-05");
  });
});
