import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FIRST_SETTINGS, type StudioSettings } from "../records/studio-settings.ts";
import { firingCostShares } from "./cost-shares.ts";
import { firingMoney } from "./firing-money.ts";
import { guestFees, guestOf } from "./guest-fees.ts";
import { monthCosts } from "./month-costs.ts";
import { pieceLitres } from "./piece-litres.ts";
import { sharedCents } from "./shared-cents.ts";
import { firedFiring, firedLoad } from "./testing/fired-load.ts";

const load = firedLoad();
const night = { name: "night", from: "22:00", to: "06:00", pricePerKWh: 0.1 };
const tariff = { format: "tariff/1" as const, name: "two", timeZone: "UTC", pricePerKWh: 0.4, slots: [night] };
const wear = { elementSetPrice: 300, elementLifeFirings: 150, shelfPrice: 60, shelfLifeFirings: 200 };
const settings: StudioSettings = { ...FIRST_SETTINGS, currency: "EUR", tariff, ...wear };

describe("what a firing cost", () => {
  test("the meter's energy, hour by hour as foretold, at the slot of each hour", () => {
    // 30 kWh by the meter over eight even hours from 20:00: two at 0.40, six at 0.10. By hand.
    const money = firingMoney(firedFiring(), load, settings);
    expect(money).toMatchObject({ kWh: 30, kWhFrom: "meter", elements: 2, shelves: [0.3, 0.3], notes: [] });
    expect(money.energy).toBeCloseTo(7.5 * 0.4 + 22.5 * 0.1, 9);
    expect(money.total).toBeCloseTo(5.25 + 2 + 0.6, 9);
  });

  test("what is not known is left out, and said", () => {
    const unread = firedFiring({ meterReadings: [] });
    expect(firingMoney(unread, load, settings)).toMatchObject({ kWh: 28, kWhFrom: "foretold" });
    const bare = firingMoney(unread, null, FIRST_SETTINGS);
    expect(bare).toMatchObject({ energy: null, elements: null, shelves: null, total: null });
    expect(bare.notes).toHaveLength(3);
    const { foretold: _, ...unforetold } = firedFiring();
    // Spread evenly from start to shut-off, which here is the same.
    expect(firingMoney(unforetold, load, settings).energy).toBeCloseTo(5.25, 9);
  });
});

describe("fair shares", () => {
  test("go by space, and sum to the cost exactly", () => {
    const { cents, pieces, wares } = firingCostShares(firedFiring(), load, settings);
    expect(cents).toBe(785);
    expect(pieces.reduce((sum, each) => sum + each.cents, 0)).toBe(785);
    expect(wares.map(({ ware, count }) => [ware, count])).toEqual([
      ["cup", 2],
      ["plate", 1],
      ["vase", 1],
    ]);
    // A cylinder 106 mm across and 206 mm high, by hand.
    expect(pieces[3]?.litres).toBeCloseTo((Math.PI / 4) * 1.06 ** 2 * 2.06, 9);
    const litres = pieces.reduce((sum, each) => sum + each.litres, 0);
    const vase = (725 * (pieces[3]?.litres ?? 0)) / litres + 30;
    expect(Math.abs((pieces[3]?.cents ?? 0) - vase)).toBeLessThanOrEqual(1);
    expect(pieces[0]?.wareId).toBe("cups");
  });

  test("whatever the weights, every hundredth is somebody's and nobody is off by more than one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        fc.array(fc.double({ min: 0, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 60 }),
        (cents, weights) => {
          const shares = sharedCents(cents, weights);
          expect(shares.reduce((sum, each) => sum + each, 0)).toBe(cents);
          const all = weights.reduce((sum, each) => sum + each, 0);
          shares.forEach((share, i) => {
            const fair = all > 0 ? (cents * (weights[i] as number)) / all : cents / weights.length;
            expect(Number.isInteger(share)).toBe(true);
            expect(Math.abs(share - fair)).toBeLessThan(1 + 1e-6);
          });
        },
      ),
    );
  });

  test("a load that holds nothing has no shares, and a cost all the same", () => {
    const plan = { format: "load-plan/1" as const, levels: [], left: [] };
    expect(firingCostShares(firedFiring(), { ...load, plan }, settings)).toMatchObject({ cents: 725, pieces: [] });
  });
});

describe("a month", () => {
  test("is what its firings sum to, by the tariff's own clock", () => {
    const late = firedFiring({ id: "g", startedAt: "2026-11-30T23:30:00.000Z", shutOffAt: "2026-12-01T07:30:00.000Z" });
    const berlin = { ...settings, tariff: { ...tariff, timeZone: "Europe/Berlin" } };
    const months = monthCosts(
      [late, firedFiring(), firedFiring({ id: "h", startedAt: null, state: "planned" })],
      [load],
      berlin,
    );
    // Half past eleven in UTC is past midnight in Berlin.
    expect(months.map(({ month, firings }) => [month, firings])).toEqual([
      ["2026-11", 1],
      ["2026-12", 1],
    ]);
    for (const each of months) {
      expect(each.total).toBeCloseTo(each.energy + each.elements + each.shelves, 9);
      expect(each.unknown).toBe(0);
    }
    const utc = monthCosts([late, firedFiring()], [load], settings);
    expect(utc).toMatchObject([{ month: "2026-11", firings: 2, kWh: 60 }]);
  });
});

describe("guests", () => {
  test("pay by the litre, and once for the firing; the sheet sums", () => {
    expect(guestOf({ ownerNote: "guest: Tamsin Oakhurst; two cups" })).toBe("Tamsin Oakhurst");
    expect(guestOf({ ownerNote: "for the guest room" })).toBeNull();
    const [sheet, ...others] = guestFees(load, { perLitre: 1.5, perFiring: 2 }, new Map([["cups", "Tamsin"]]));
    expect(others).toEqual([]);
    const litres = 2 * pieceLitres({ diameterMm: 80, heightMm: 90 }, load.request.rules);
    expect(sheet).toMatchObject({ guest: "Tamsin", firingCents: 200, lines: [{ ware: "cup", count: 2 }] });
    expect(sheet?.litres).toBeCloseTo(litres, 12);
    expect(sheet?.cents).toBe(200 + Math.round(150 * litres));
    expect(guestFees(load, { perLitre: 1, perFiring: 2 }, new Map())).toEqual([]);
  });
});
