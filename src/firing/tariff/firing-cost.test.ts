import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestStart } from "./best-start.ts";
import { firingCost } from "./firing-cost.ts";
import { priceSpans } from "./price-spans.ts";
import { readTariff } from "./tariff.ts";

const base = { format: "tariff/1", name: "t", timeZone: "Europe/Berlin", pricePerKWh: 0.3 } as const;
const night = { name: "night", from: "22:00", to: "06:00", pricePerKWh: 0.2 } as const;

/** Minute by minute, each minute's price asked of the platform's clock by itself: another road to the same sum. */
function countedByMinutes(firing: { minutes: number[]; watts: number[] }, timeZone: string, startMs: number): number {
  const clock = new Intl.DateTimeFormat("en-GB", { timeZone, hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  let cost = 0;
  for (let i = 1; i < firing.minutes.length; i++) {
    for (let minute = firing.minutes[i - 1] as number; minute < (firing.minutes[i] as number); minute++) {
      const shown = clock.format(startMs + minute * 60_000);
      const price = shown >= "22:00" || shown < "06:00" ? 0.2 : 0.3;
      cost += ((firing.watts[i] as number) / 1000 / 60) * price;
    }
  }
  return cost;
}

describe("what a firing costs", () => {
  test("is what counting minute by minute gives, on any day and in any zone", () => {
    const zones = ["Europe/Berlin", "America/New_York", "Asia/Kolkata", "Australia/Lord_Howe", "UTC"];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: 0, max: 600 * 1440 }),
        fc.array(fc.tuple(fc.integer({ min: 1, max: 240 }), fc.integer({ min: 0, max: 9000 })), {
          minLength: 1,
          maxLength: 6,
        }),
        (timeZone, startMinute, steps) => {
          const startMs = Date.UTC(2026, 0, 1) + startMinute * 60_000;
          const minutes = [0];
          for (const [length] of steps) minutes.push((minutes.at(-1) as number) + length);
          const firing = { minutes, watts: [0, ...steps.map(([, watts]) => watts)] };
          const tariff = readTariff({ ...base, timeZone, slots: [night] });
          const cost = firingCost(firing, tariff, new Date(startMs).toISOString());
          expect(cost.total).toBeCloseTo(countedByMinutes(firing, timeZone, startMs), 6);
          expect(cost.slots.reduce((sum, { kWh }) => sum + kWh, 0)).toBeCloseTo(cost.kWh, 9);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });

  test("carries the demand charge on the meter's own windows and its share of the standing charge", () => {
    // 6 kW from 8:10 to 8:40. Quarter hours: 8:15–8:30 full, 6 kW. Half hours: 8:00–8:30 has 20 of 30 min, 4 kW.
    // Hours: 30 of 60 min, 3 kW.
    const firing = { minutes: [0, 30], watts: [0, 6000] };
    const withWindow = (windowMin: number) =>
      firingCost(
        firing,
        readTariff({ ...base, demand: { pricePerKW: 5, windowMin }, fixed: { price: 12, share: 0.25 } }),
        "2026-06-01T08:10",
      );
    expect([15, 30, 60].map((windowMin) => withWindow(windowMin).peakKW)).toEqual([
      expect.closeTo(6, 9),
      expect.closeTo(4, 9),
      expect.closeTo(3, 9),
    ]);
    // 3 kWh at 0.30, 5 × 4 kW, 12 × 0.25.
    expect(withWindow(30).total).toBeCloseTo(0.9 + 20 + 3, 9);
  });

  test("a demand that the period has already seen costs nothing, and other load counts", () => {
    const demand = { pricePerKW: 10, windowMin: 30, otherLoadKW: 0.5 } as const;
    const firing = { minutes: [0, 240], watts: [0, 6000] };
    const before = readTariff({ ...base, demand: { ...demand, alreadyKW: 7 } });
    expect(firingCost(firing, before, "2026-01-14T10:00")).toMatchObject({ peakKW: 6.5, demandCost: 0 });
    const first = readTariff({ ...base, demand: { ...demand, alreadyKW: 6 } });
    expect(firingCost(firing, first, "2026-01-14T10:00").demandCost).toBeCloseTo(5, 9);
  });

  test("carbon is counted slot by slot, and not claimed where a slot does not say", () => {
    const slots = [{ ...night, carbonGPerKWh: 100 }];
    const firing = { minutes: [0, 240], watts: [0, 1000] };
    const known = readTariff({ ...base, carbonGPerKWh: 400, slots });
    // 20–22 by day, 22–24 by night: 2 × 400 g + 2 × 100 g.
    expect(firingCost(firing, known, "2026-01-14T20:00").carbonKg).toBeCloseTo(1, 9);
    expect(firingCost(firing, readTariff({ ...base, slots }), "2026-01-14T20:00").carbonKg).toBeNull();
    expect(firingCost(firing, readTariff({ ...base, slots }), "2026-01-14T22:00").carbonKg).toBeCloseTo(0.4, 9);
  });

  test("a slot past midnight belongs to the day on which it begins", () => {
    const slots = [{ name: "weekend", from: "20:00", to: "04:00", weekdays: ["friday"], pricePerKWh: 0.05 }];
    // 16 January 2026 is a Friday.
    const spans = priceSpans(
      readTariff({ ...base, timeZone: "UTC", slots }),
      Date.UTC(2026, 0, 15),
      Date.UTC(2026, 0, 19),
    );
    expect(spans.filter(({ slot }) => slot === 0).map(({ fromMs, toMs }) => [fromMs, toMs])).toEqual([
      [Date.UTC(2026, 0, 16, 20), Date.UTC(2026, 0, 17, 4)],
    ]);
  });

  test("the first of two slots that hold at once counts", () => {
    const tariff = readTariff({ ...base, slots: [{ ...night, name: "first", pricePerKWh: 0.1 }, night] });
    expect(firingCost({ minutes: [0, 60], watts: [0, 1000] }, tariff, "2026-06-01T23:00").total).toBeCloseTo(0.1, 12);
  });
});

describe("the best start", () => {
  const firing = { minutes: [0, 480, 900], watts: [0, 4000, 0] };
  const tariff = readTariff({ ...base, slots: [night] });
  const whole = { firing, tariff, earliest: "2026-06-01T08:00", latest: "2026-06-02T08:00" } as const;

  test("is the whole night where the firing fits in it: 32 kWh at 0.20, not at 0.30", () => {
    const found = bestStart({ ...whole, wanted: { kind: "cheapest" } });
    if (found.kind === "none") throw new Error(found.reason);
    expect(found.best.startIso).toBe("2026-06-01T20:00:00.000Z");
    expect(found.best.cost.total).toBeCloseTo(6.4, 9);
    expect(found.earliest.cost.total).toBeCloseTo(9.6, 9);
    expect(found.dearest.cost.total).toBeCloseTo(9.6, 9);
    expect(found.best.opensIso).toBeNull();
  });

  test("meets an opening hour, and is the cheapest that does", () => {
    // Cool after 15 h: to be open by 9:00, it starts by 18:00 the day before: 18–22 by day, 22–2 by night.
    const found = bestStart({ ...whole, wanted: { kind: "open-by", time: "09:00" }, openAfterMin: 900 });
    if (found.kind === "none") throw new Error(found.reason);
    expect(found.best.startLocal).toBe("2026-06-01 18:00, UTC+02:00");
    expect(found.best.opensLocal).toBe("2026-06-02 09:00, UTC+02:00");
    expect(found.best.cost.total).toBeCloseTo(16 * 0.3 + 16 * 0.2, 9);
  });

  test("never opens outside her hours", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 0, max: 2000 }),
        (from, to, openAfterMin) => {
          const openHours = { from: `${from}:00`, to: `${to}:00` };
          const found = bestStart({ ...whole, wanted: { kind: "cheapest" }, openAfterMin, openHours, stepMin: 30 });
          if (found.kind === "none") return;
          for (const choice of [found.best, found.earliest, found.dearest]) {
            const opens = (choice.opensLocal as string).slice(11, 16);
            const [low, high] = [`${String(from).padStart(2, "0")}:00`, `${String(to).padStart(2, "0")}:00`];
            expect(low <= high ? opens >= low && opens <= high : opens >= low || opens <= high).toBe(true);
          }
        },
      ),
      { numRuns: 60, seed: 5 },
    );
  });

  test("says so where there is none", () => {
    const found = bestStart({
      ...whole,
      latest: "2026-06-01T09:00",
      wanted: { kind: "cheapest" },
      openAfterMin: 900,
      openHours: { from: "06:00", to: "07:00" },
    });
    expect(found).toMatchObject({ kind: "none", reason: expect.stringMatching(/No start from .* 06:00 and 07:00/) });
  });

  test("opens by the clock in the night that has 25 hours", () => {
    // Start 24 October 2026 at 20:00 summer time; 15 hours later the clock shows 10:00, not 11:00.
    const found = bestStart({
      firing,
      tariff,
      earliest: "2026-10-24T20:00",
      latest: "2026-10-24T20:00",
      wanted: { kind: "open-by", time: "10:00" },
      openAfterMin: 900,
    });
    expect(found).toMatchObject({ kind: "found", best: { opensLocal: "2026-10-25 10:00, UTC+01:00" } });
  });
});

describe("refuses, in one sentence", () => {
  test.each([
    [{ ...base, pricePerKWh: -0.1 }, /pricePerKWh: found -0.1/],
    [{ ...base, timeZone: "Berlin" }, /timeZone: found "Berlin"; expected an IANA time zone/],
    [{ ...base, slots: [{ ...night, from: "25:00" }] }, /slots\[0\].from: found "25:00"; expected a time of day/],
    [{ ...base, slots: [{ ...night, from: "06:00" }] }, /no time at all/],
    [{ ...base, slots: [{ ...night, weekdays: ["mon"] }] }, /slots\[0\].weekdays\[0\]: found "mon"; expected "monday"/],
    [{ ...base, slots: [{ ...night, pricePerKwh: 1 }] }, /pricePerKwh: found a field this format does not have/],
    [{ ...base, demand: { pricePerKW: 5, windowMin: 20 } }, /demand.windowMin: found 20; expected 15/],
    [{ ...base, fixed: { price: 5, share: 2 } }, /fixed.share: found 2/],
  ])("a tariff that is none: %#", (json, message) => {
    expect(() => readTariff(json)).toThrow(message);
  });

  test.each([
    ["tomorrow", /start: found "tomorrow"; expected a date and time/],
    ["2026-02-30T10:00", /start: found "2026-02-30T10:00"; expected a date and time/],
    ["2026-02-20T24:30", /start: found/],
  ])("a start that is none: %s", (start, message) => {
    expect(() => firingCost({ minutes: [0, 60], watts: [0, 1000] }, readTariff(base), start)).toThrow(message);
  });

  test("power that is none, and an end before the beginning", () => {
    const tariff = readTariff(base);
    expect(() => firingCost({ minutes: [0, 60], watts: [0, -5] }, tariff, "2026-01-01T10:00")).toThrow(/found -5/);
    expect(() => firingCost({ minutes: [0], watts: [0] }, tariff, "2026-01-01T10:00")).toThrow(/at least two/);
    const firing = { minutes: [0, 60], watts: [0, 1000] };
    const span = { earliest: "2026-01-02T00:00", latest: "2026-01-01T00:00" };
    expect(() => bestStart({ firing, tariff, ...span, wanted: { kind: "cheapest" } })).toThrow(/latest: found/);
    expect(() =>
      bestStart({
        firing,
        tariff,
        earliest: span.latest,
        latest: span.earliest,
        wanted: { kind: "open-by", time: "9:00" },
      }),
    ).toThrow(/openAfterMin: found nothing/);
  });
});
