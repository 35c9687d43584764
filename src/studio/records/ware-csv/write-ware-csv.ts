import type { WareRecord } from "../ware-record.ts";
import { guarded, quoted } from "./cell-safety.ts";
import { ID_HEADING, WARE_COLUMNS, type WareNames } from "./ware-columns.ts";

/**
 * The ware list as CSV for a spreadsheet: RFC 4180, UTF-8 with a byte order mark, lengths in millimetres. No cell of it
 * is taken for a formula, and reading it back changes nothing.
 */
export function writeWareCsv(ware: readonly WareRecord[], names: WareNames): string {
  const headings = [ID_HEADING, ...WARE_COLUMNS.map(({ heading }) => heading)];
  const rows = ware.map((record) => [
    record.id,
    ...WARE_COLUMNS.map(({ write }) => {
      const cell = write(record, names);
      // A number may begin with its sign.
      return Number.isFinite(Number(cell)) ? cell : guarded(cell);
    }),
  ]);
  return `\uFEFF${[headings, ...rows].map((cells) => `${cells.map(quoted).join(",")}\r\n`).join("")}`;
}
