import type { PackingRecordRow } from "./packing-records.ts";
import { median, type Row } from "./row.ts";

/** How many equal discs a circle's problem has; null for every other problem. */
const equalDiscs = (row: PackingRecordRow): number | null => {
  const found = /^(\d+) equal discs in a circle$/.exec(row.name);
  return found ? Number(found[1]) : null;
};

/** The table's rows about published packings, from every problem's own row. */
export function recordRows(rows: readonly PackingRecordRow[]): Row[] {
  const upTo = (least: number, most: number): PackingRecordRow[] =>
    rows.filter((row) => {
      const count = equalDiscs(row);
      return count !== null && count >= least && count <= most;
    });
  const few = upTo(1, 37);
  const many = upTo(38, 61);
  const unequal = rows.filter((row) => row.name.endsWith("unequal discs in a circle"));
  const missed = (some: readonly PackingRecordRow[]): string => {
    const all = some.reduce((sum, row) => sum + row.seeds, 0);
    return `missed ${some.reduce((sum, row) => sum + row.missed, 0)} of ${all}`;
  };
  const slowestMedian = (some: readonly PackingRecordRow[]): number => Math.max(...some.map((row) => row.medianMs));
  const result: Row[] = [];
  if (few.length > 0) {
    const slowest = slowestMedian(few);
    result.push({
      what: "equal discs in a circle, up to 37, within 0.1 % of the record",
      target: "≤ 500 ms",
      found: `median ${median(few.map((row) => row.medianMs)).toFixed(0)} ms, slowest number's ${slowest.toFixed(0)} ms, ${missed(few)}`,
      met: slowest <= 500,
    });
  }
  if (many.length > 0) {
    const shareMissed = many.reduce((sum, row) => sum + row.missed, 0) / many.reduce((sum, row) => sum + row.seeds, 0);
    result.push({
      what: "the same, 38 to 61",
      target: "≤ 5 s for 95 % of seeds",
      found: `slowest number's median ${slowestMedian(many).toFixed(0)} ms, ${missed(many)}`,
      met: shareMissed <= 0.05,
    });
  }
  if (unequal.length > 0) {
    result.push({
      what: `unequal discs, ${unequal.length} published problems, within 1 %`,
      target: "all, in 10 s",
      found: `slowest median ${slowestMedian(unequal).toFixed(0)} ms, ${missed(unequal)}`,
      met: unequal.every((row) => row.missed === 0),
    });
  }
  return result;
}
