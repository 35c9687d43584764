import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import type { CostShares } from "../../studio/firings/cost-shares.ts";
import { feesCsv, monthsCsv, sharesCsv } from "./money-csv.ts";

// Read back by csv-parse, a reader of RFC 4180 that is not ours.
const readBack = (text: string): string[][] => parse(text, { bom: true });

test("a fee sheet reads back as it is, sums included; names are no formulas", () => {
  const line = { ware: 'bowl, "wide"', count: 2, litres: 3.5, cents: 315 };
  const sheet = { guest: "=Tamsin", lines: [line], litres: 3.5, firingCents: 300, cents: 615 };
  expect(readBack(feesCsv([sheet], "glaze, cone 6", "EUR"))).toEqual([
    ["guest", "firing", "ware", "pieces", "litres", "fee, EUR"],
    ["'=Tamsin", "glaze, cone 6", 'bowl, "wide"', "2", "3.500", "3.15"],
    ["'=Tamsin", "glaze, cone 6", "for the firing", "", "", "3.00"],
    ["'=Tamsin", "glaze, cone 6", "in all", "", "3.500", "6.15"],
  ]);
});

test("shares end with their sum", () => {
  const wares = [
    { ware: "cup", wareId: null, count: 3, litres: 1.2, cents: 400 },
    { ware: "vase", wareId: null, count: 1, litres: 2, cents: 385 },
  ];
  const rows = readBack(sharesCsv({ wares, cents: 785, pieces: [] } as unknown as CostShares, ""));
  expect(rows[0]?.[3]).toBe("share");
  expect(rows.at(-1)).toEqual(["all", "4", "", "7.85"]);
});

test("a month's row holds its parts and its sum", () => {
  const month = {
    month: "2026-11",
    firings: 2,
    kWh: 71.25,
    energy: 20.5,
    elements: 4,
    shelves: 1.2,
    total: 25.7,
    unknown: 1,
  };
  expect(readBack(monthsCsv([month], "EUR"))[1]).toEqual([
    ...["2026-11", "2", "71.25", "20.50", "4.00", "1.20", "25.70", "1"],
  ]);
});
