import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BadInput } from "../../measures/bad-input.ts";
import { bestStart } from "./best-start.ts";
import { firingCost } from "./firing-cost.ts";
import { evenStretches, offsetMinutes } from "./local-clock.ts";
import { pricePieces } from "./price-pieces.ts";
import { readTariff, type Tariff } from "./tariff.ts";

const HOUR = 3_600_000;
const utc = (text: string): number => Date.parse(text);

const night: Tariff = readTariff({
  timeZone: "Europe/London",
  currency: "GBP",
  otherwisePerKWh: 0.3,
  slots: [{ name: "night", pricePerKWh: 0.1, from: "00:30", to: "05:30" }],
});
/** A steady draw. */
const steady = (kW: number, hours: number) => ({ minutes: [0, hours * 60], watts: [0, kW * 1000] });
const slotKWh = (cost: ReturnType<typeof firingCost>, name: string): number =>
  cost.slots.find((slot) => slot.name === name)?.kWh ?? 0;

describe("the clock on the wall", () => {
  // Directive 2000/84/EC: summer-time begins and ends at 1.00 universal time on the last Sunday of March and of October.
  // Energy Policy Act of 2005, section 110: second Sunday of March, first of November, at 2.00 on the clock.
  // Half an hour only on Lord Howe: the IANA time zone database.
  test.each([
    ["Europe/London", "2026-03-29T01:00:00Z", 0, 60],
    ["Europe/Lisbon", "2026-10-25T01:00:00Z", 60, 0],
    ["Europe/Athens", "2026-03-29T01:00:00Z", 120, 180],
    ["America/Denver", "2026-03-08T09:00:00Z", -420, -360],
    ["America/Denver", "2026-11-01T08:00:00Z", -360, -420],
    ["Australia/Lord_Howe", "2026-04-04T15:00:00Z", 660, 630],
  ])("%s is changed at %s", (zone, change, before, after) => {
    const at = utc(change);
    expect(evenStretches(zone, at - 7 * HOUR - 123_000, at + 9 * HOUR)).toEqual([
      { fromMs: at - 7 * HOUR - 123_000, toMs: at, offsetMin: before },
      { fromMs: at, toMs: at + 9 * HOUR, offsetMin: after },
    ]);
  });

  test("a quarter-hour zone without changes stays one stretch", () => {
    expect(offsetMinutes("Asia/Kathmandu", utc("2026-01-01T00:00:00Z"))).toBe(345);
    expect(evenStretches("Asia/Kathmandu", utc("2026-01-01T00:00:00Z"), utc("2026-02-01T00:00:00Z"))).toHaveLength(1);
  });
});

describe("slots", () => {
  test("a firing's energy is cut at their edges", () => {
    // 22.00 to 8.00 in winter, 5 kW: two and a half hours before the night slot, five within, two and a half after.
    const cost = firingCost(steady(5, 10), utc("2026-01-14T22:00:00Z"), night);
    expect(slotKWh(cost, "night")).toBeCloseTo(25, 9);
    expect(slotKWh(cost, "otherwise")).toBeCloseTo(25, 9);
    expect(cost.cost).toBeCloseTo(25 * 0.1 + 25 * 0.3, 9);
  });

  test("the night that clocks go forward holds four hours of a five-hour slot, the night they go back six", () => {
    expect(slotKWh(firingCost(steady(1, 24), utc("2026-03-28T12:00:00Z"), night), "night")).toBeCloseTo(4, 9);
    expect(slotKWh(firingCost(steady(1, 24), utc("2026-10-24T12:00:00Z"), night), "night")).toBeCloseTo(6, 9);
    expect(slotKWh(firingCost(steady(1, 24), utc("2026-06-24T12:00:00Z"), night), "night")).toBeCloseTo(5, 9);
  });

  test("a slot past midnight belongs to the day on which it begins", () => {
    const friday = readTariff({
      ...night,
      slots: [{ name: "weekend", pricePerKWh: 0.05, from: "20:00", to: "04:00", days: ["Fri"] }],
    });
    // The 16th of January 2026 is a Friday.
    const whole = pricePieces(friday, utc("2026-01-15T00:00:00Z"), utc("2026-01-19T00:00:00Z"));
    expect(whole.filter((piece) => piece.slot === 0).map(({ fromMs, toMs }) => [fromMs, toMs])).toEqual([
      [utc("2026-01-16T20:00:00Z"), utc("2026-01-17T04:00:00Z")],
    ]);
  });

  test("months and whole days are kept, and the first of two slots counts", () => {
    const seasons = readTariff({
      ...night,
      timeZone: "UTC",
      slots: [
        { name: "winter peak", pricePerKWh: 1, from: "16:00", to: "19:00", months: [12, 1, 2] },
        { name: "winter", pricePerKWh: 0.4, from: "00:00", to: "00:00", months: [12, 1, 2] },
      ],
    });
    const cost = firingCost(steady(1, 24), utc("2026-02-28T12:00:00Z"), seasons);
    expect(slotKWh(cost, "otherwise")).toBeCloseTo(12, 9);
    expect(slotKWh(cost, "winter")).toBeCloseTo(9, 9);
    expect(slotKWh(cost, "winter peak")).toBeCloseTo(3, 9);
  });

  test("pieces cover any span without gap or overlap, and hold all the energy", () => {
    const span = fc.record({ start: fc.integer({ min: 0, max: 9000 }), hours: fc.integer({ min: 1, max: 100 }) });
    fc.assert(
      fc.property(span, fc.constantFrom("Europe/London", "America/Denver", "Australia/Lord_Howe"), (each, timeZone) => {
        const from = utc("2026-01-01T00:07:00Z") + each.start * HOUR;
        const pieces = pricePieces({ ...night, timeZone }, from, from + each.hours * HOUR);
        expect(pieces[0]?.fromMs).toBe(from);
        expect(pieces.at(-1)?.toMs).toBe(from + each.hours * HOUR);
        pieces.slice(1).forEach((piece, i) => {
          expect(piece.fromMs).toBe(pieces[i]?.toMs);
        });
        expect(firingCost(steady(2, each.hours), from, { ...night, timeZone }).kWh).toBeCloseTo(2 * each.hours, 6);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a charge for the highest draw", () => {
  const demand = { pricePerKW: 10, windowMin: 30 } as const;
  test("is the mean over the meter's windows, not over the firing's own", () => {
    // 6 kW from 10.15 to 10.45 is 3 kW in the window from 10.00 and 3 kW in the one from 10.30.
    const cost = firingCost(steady(6, 0.5), utc("2026-01-14T10:15:00Z"), { ...night, demand });
    expect(cost.highestDraw?.kW).toBeCloseTo(3, 9);
    expect(cost.demandCost).toBeCloseTo(30, 9);
  });
  test("costs nothing below what the period has already seen", () => {
    const tariff = { ...night, demand: { ...demand, alreadyKW: 7, otherLoadKW: 0.5 } };
    const cost = firingCost(steady(6, 4), utc("2026-01-14T10:00:00Z"), tariff);
    expect(cost.highestDraw?.kW).toBeCloseTo(6.5, 9);
    expect(cost.demandCost).toBe(0);
  });
});

describe("the best start", () => {
  const week = { earliestMs: utc("2026-01-14T08:00:00Z"), latestMs: utc("2026-01-16T08:00:00Z") };
  test("puts the draw into the cheap hours", () => {
    const { best, now } = bestStart(steady(5, 4), night, week);
    expect(best?.firing.cost).toBeCloseTo(4 * 5 * 0.1, 9);
    expect(best?.startMs).toBe(utc("2026-01-15T00:30:00Z"));
    expect(now.firing.cost).toBeCloseTo(4 * 5 * 0.3, 9);
  });
  test("keeps the opening where it is wanted and somebody there at shut-off", () => {
    const { best, fitted, tried } = bestStart(steady(5, 9), night, {
      ...week,
      openAfterHours: 21,
      openBetweenMs: [utc("2026-01-16T08:00:00Z"), utc("2026-01-16T12:00:00Z")],
      shutOffHours: { from: "07:00", to: "23:00" },
    });
    expect(fitted).toBeGreaterThan(0);
    expect(fitted).toBeLessThan(tried);
    expect(best?.openMs).toBeGreaterThanOrEqual(utc("2026-01-16T08:00:00Z"));
    expect(best?.openMs).toBeLessThanOrEqual(utc("2026-01-16T12:00:00Z"));
    expect(best?.shutOffMs).toBeLessThanOrEqual(utc("2026-01-15T23:00:00Z"));
  });
  test("says that none fits", () => {
    const none = bestStart(steady(5, 9), night, { ...week, startHours: { from: "10:01", to: "10:02" } });
    expect(none).toMatchObject({ best: null, dearest: null, fitted: 0 });
  });
  test("no start within the span is cheaper, by trying each with plain sums", () => {
    const { best } = bestStart(steady(5, 3), night, { ...week, everyMin: 30 });
    const plain: number[] = [];
    for (let at = week.earliestMs; at <= week.latestMs; at += HOUR / 2) {
      let cost = 0;
      for (let minute = 0; minute < 180; minute++) {
        const ofDay = ((at / 60_000 + minute) % 1440) + 0.5;
        cost += (5 / 60) * (ofDay > 30 && ofDay < 330 ? 0.1 : 0.3);
      }
      plain.push(cost);
    }
    expect(best?.firing.cost).toBeCloseTo(Math.min(...plain), 9);
  });
});

test("a tariff that cannot be is refused with its field", () => {
  expect(() => readTariff({ ...night, timeZone: "Middle/Earth" })).toThrow(/timeZone.*IANA/);
  expect(() => readTariff({ ...night, slots: [{ ...night.slots[0], from: "25:00" }] })).toThrow(BadInput);
  expect(() => bestStart(steady(5, 3), night, { earliestMs: 10, latestMs: 5 })).toThrow(/latestMs/);
});
