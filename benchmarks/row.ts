/** One line of the table: what was aimed at and what was found in this run. */
export interface Row {
  readonly what: string;
  readonly target: string;
  readonly found: string;
  /** Null where the target is no number to be met, or the part is not there yet. */
  readonly met: boolean | null;
}

/** The middle of some numbers; of an even count, the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** A share as a signed percentage. */
export const percent = (share: number): string => `${share >= 0 ? "+" : "−"}${(Math.abs(share) * 100).toFixed(1)} %`;

/** Lines of a table, its columns as wide as they need to be. */
export function tableLines(rows: readonly Row[]): string[] {
  const wide = (column: "what" | "target" | "found"): number => Math.max(...rows.map((row) => row[column].length));
  const [what, target, found] = [wide("what"), wide("target"), wide("found")];
  return rows.map((row) => {
    const met = row.met === null ? "" : row.met ? "met" : "missed";
    return `  ${row.what.padEnd(what)}  ${row.target.padEnd(target)}  ${row.found.padEnd(found)}  ${met}`.trimEnd();
  });
}
