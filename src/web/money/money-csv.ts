import type { CostShares } from "../../studio/firings/cost-shares.ts";
import type { GuestFees } from "../../studio/firings/guest-fees.ts";
import type { MonthCost } from "../../studio/firings/month-costs.ts";
import { guarded, quoted } from "../../studio/records/ware-csv/cell-safety.ts";

// Tables for a spreadsheet: RFC 4180, UTF-8 with a byte order mark, a point in every fraction. Names typed by others are
// guarded against being taken for formulas.

type Cell = string | number;

/** Months, the oldest first: what each cost. */
export const monthsCsv = (months: readonly MonthCost[], currency: string): string =>
  csv([
    ["month", "firings", "kWh", "energy", "elements", "shelves", money("total", currency), "firings without a price"],
    ...months.map(({ month, firings, kWh, energy, elements, shelves, total, unknown }) => [
      ...[month, firings, kWh.toFixed(2), energy.toFixed(2), elements.toFixed(2), shelves.toFixed(2), total.toFixed(2)],
      unknown,
    ]),
  ]);

/** A firing's shares, by kind of piece. They sum to its cost exactly. */
export const sharesCsv = ({ wares, cents }: CostShares, currency: string): string =>
  csv([
    ["ware", "pieces", "litres", money("share", currency)],
    ...wares.map((each) => [each.ware, each.count, each.litres.toFixed(3), inMoney(each.cents)]),
    ["all", wares.reduce((sum, each) => sum + each.count, 0), "", inMoney(cents)],
  ]);

/** A firing's fee sheets, guest after guest. */
export const feesCsv = (sheets: readonly GuestFees[], firing: string, currency: string): string =>
  csv([
    ["guest", "firing", "ware", "pieces", "litres", money("fee", currency)],
    ...sheets.flatMap(({ guest, lines, firingCents, litres, cents }) => [
      ...lines.map((line) => [guest, firing, line.ware, line.count, line.litres.toFixed(3), inMoney(line.cents)]),
      [guest, firing, "for the firing", "", "", inMoney(firingCents)],
      [guest, firing, "in all", "", litres.toFixed(3), inMoney(cents)],
    ]),
  ]);

/** Hundredths as money: 1234 is "12.34". */
export const inMoney = (cents: number): string => (cents / 100).toFixed(2);

const money = (what: string, currency: string): string => (currency === "" ? what : `${what}, ${currency}`);

const csv = (rows: readonly (readonly Cell[])[]): string =>
  `\uFEFF${rows.map((cells) => `${cells.map(asCell).join(",")}\r\n`).join("")}`;

const asCell = (cell: Cell): string => quoted(typeof cell === "number" ? String(cell) : guarded(cell));
