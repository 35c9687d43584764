import { describe, expect, test } from "vitest";
import { firingCost } from "../../src/firing/tariff/firing-cost.ts";
import { readTariff } from "../../src/firing/tariff/tariff.ts";
import { wallText } from "../../src/firing/tariff/zone-clock.ts";

/** A steady kilowatt: in each slot, as many kWh as hours. */
const steady = (hours: number, watts = 1000) => ({ minutes: [0, hours * 60], watts: [0, watts] });
const nightAndDay = (timeZone: string, from = "22:00", to = "06:00") =>
  readTariff({
    format: "tariff/1",
    name: "night and day",
    timeZone,
    pricePerKWh: 0.4,
    slots: [{ name: "night", from, to, pricePerKWh: 0.2 }],
  });
const hoursAtNight = (timeZone: string, start: string, hours: number, from?: string, to?: string): number => {
  const cost = firingCost(steady(hours), nightAndDay(timeZone, from, to), start);
  const night = cost.slots.find(({ slot }) => slot === "night")?.kWh ?? 0;
  expect(cost.kWh).toBeCloseTo(hours, 12);
  expect(cost.total).toBeCloseTo(night * 0.2 + (hours - night) * 0.4, 9);
  return night;
};

describe("IANA time zone database, rule EU: Europe/Berlin", () => {
  test("the clock of the program moves when the rule says", () => {
    const back = Date.UTC(2026, 9, 25, 1);
    expect(wallText("Europe/Berlin", back - 1)).toBe("2026-10-25 02:59, UTC+02:00");
    expect(wallText("Europe/Berlin", back)).toBe("2026-10-25 02:00, UTC+01:00");
    const forward = Date.UTC(2027, 2, 28, 1);
    expect(wallText("Europe/Berlin", forward - 1)).toBe("2027-03-28 01:59, UTC+01:00");
    expect(wallText("Europe/Berlin", forward)).toBe("2027-03-28 03:00, UTC+02:00");
  });

  test("an ordinary night of 22 to 6 has eight hours, October's last one nine, March's seven", () => {
    // From 20:00 for twelve hours: 2 h of day, the night, then day again.
    expect(hoursAtNight("Europe/Berlin", "2026-10-20T20:00", 12)).toBeCloseTo(8, 9);
    // 22–24 (2 h), 0–3 summer time (3 h), 2–6 winter time (4 h).
    expect(hoursAtNight("Europe/Berlin", "2026-10-24T20:00", 12)).toBeCloseTo(9, 9);
    // 22–24 (2 h), 0–2 winter time (2 h), 3–6 summer time (3 h).
    expect(hoursAtNight("Europe/Berlin", "2027-03-27T20:00", 12)).toBeCloseTo(7, 9);
  });

  test("a start in the repeated hour is asked about, and either answer is an hour apart", () => {
    const tariff = nightAndDay("Europe/Berlin");
    expect(() => firingCost(steady(5), tariff, "2026-10-25T02:30")).toThrow(
      /shows twice that day; expected 2026-10-25 02:30, UTC\+02:00 or 2026-10-25 02:30, UTC\+01:00/,
    );
    // 02:30 summer time to 06:00 winter time is 4.5 h, 02:30 winter time to 06:00 is 3.5 h.
    expect(hoursAtNight("Europe/Berlin", "2026-10-25T02:30+02:00", 5)).toBeCloseTo(4.5, 9);
    expect(hoursAtNight("Europe/Berlin", "2026-10-25T02:30+01:00", 5)).toBeCloseTo(3.5, 9);
    expect(() => firingCost(steady(5), tariff, "2027-03-28T02:30")).toThrow(/Europe\/Berlin skips that day/);
  });
});

test.each([
  // Directive 2000/84/EC, the Energy Policy Act of 2005 (section 110), and tzdata's rule LH: half an hour on Lord Howe.
  ["Europe/London", "2026-03-29T01:00:00Z", "UTC+00:00", "UTC+01:00"],
  ["Europe/Athens", "2026-03-29T01:00:00Z", "UTC+02:00", "UTC+03:00"],
  ["America/Denver", "2026-11-01T08:00:00Z", "UTC−06:00", "UTC−07:00"],
  ["Australia/Lord_Howe", "2026-04-04T15:00:00Z", "UTC+11:00", "UTC+10:30"],
  ["Asia/Kathmandu", "2026-03-29T01:00:00Z", "UTC+05:45", "UTC+05:45"],
])("%s before and after %s", (zone, change, before, after) => {
  const at = Date.parse(change);
  expect(wallText(zone, at - 1)).toContain(before);
  expect(wallText(zone, at)).toContain(after);
});

describe("IANA time zone database, rule US: America/New_York", () => {
  test("the clock of the program moves when the rule says", () => {
    const back = Date.UTC(2026, 10, 1, 6);
    expect(wallText("America/New_York", back - 1)).toBe("2026-11-01 01:59, UTC−04:00");
    expect(wallText("America/New_York", back)).toBe("2026-11-01 01:00, UTC−05:00");
    const forward = Date.UTC(2027, 2, 14, 7);
    expect(wallText("America/New_York", forward - 1)).toBe("2027-03-14 01:59, UTC−05:00");
    expect(wallText("America/New_York", forward)).toBe("2027-03-14 03:00, UTC−04:00");
  });

  test("a slot that begins within the repeated hour begins twice, as the clock on the wall does", () => {
    // 1:30–5:00. Summer time 1:30–2:00 (0.5 h); then the clock shows 1:00–1:30 again (out); winter time 1:30–5:00 (3.5 h).
    expect(hoursAtNight("America/New_York", "2026-11-01T00:00", 8, "01:30", "05:00")).toBeCloseTo(4, 9);
    // 23:00–1:30: 23–1:30 summer time (2.5 h), and the repeated 1:00–1:30 of winter time (0.5 h).
    expect(hoursAtNight("America/New_York", "2026-10-31T22:00", 8, "23:00", "01:30")).toBeCloseTo(3, 9);
  });

  test("a slot that begins within the skipped hour begins when the clock has jumped past it", () => {
    // 2:30–5:00: 2:30 never comes; 3:00–5:00 is 2 h.
    expect(hoursAtNight("America/New_York", "2027-03-14T00:00", 8, "02:30", "05:00")).toBeCloseTo(2, 9);
  });

  test("the days of the week and the months are the wall's too", () => {
    const tariff = readTariff({
      format: "tariff/1",
      name: "weekend of October",
      timeZone: "America/New_York",
      pricePerKWh: 0.3,
      slots: [
        {
          name: "weekend",
          from: "00:00",
          to: "24:00",
          weekdays: ["saturday", "sunday"],
          months: [10],
          pricePerKWh: 0.1,
        },
      ],
    });
    // 31 October 2026 is a Saturday. From Friday 22:00 for 30 h: 2 h Friday, 24 h Saturday, 4 h Sunday 1 November.
    const cost = firingCost(steady(30), tariff, "2026-10-30T22:00");
    expect(cost.slots.map(({ slot, kWh }) => [slot, Math.round(kWh * 1e9) / 1e9])).toEqual([
      ["weekend", 24],
      [null, 6],
    ]);
    expect(cost.total).toBeCloseTo(24 * 0.1 + 6 * 0.3, 9);
  });
});
