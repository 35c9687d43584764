import { parse } from "csv-parse/browser/esm/sync";
import { BadInput } from "../../measures/bad-input.ts";

export interface CsvRow {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

const SEPARATORS = [";", "\t", ",", "|"] as const;
const SAMPLED_LINES = 60;

/** Splits a file into rows of trimmed cells, finding its separator; a byte order mark and a `sep=` line are understood. */
export function csvRows(text: string): CsvRow[] {
  const plain = text.replace(/^\uFEFF/, "");
  if (plain.trim() === "") throw notALog("an empty file");
  if (plain.includes("\u0000")) throw notALog("bytes that are not text; save the spreadsheet as CSV first");
  const named = /^sep=(.)[\r\n]/i.exec(plain)?.[1];
  const rows: CsvRow[] = [];
  try {
    parse(plain, {
      delimiter: named ?? separatorOf(plain),
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      trim: true,
      on_record: (cells, { lines }) => {
        if (cells.some((cell) => cell !== "")) rows.push({ line: lines, cells });
        return null;
      },
    });
  } catch (error) {
    throw notALog(`text that is no CSV (${error instanceof Error ? error.message : String(error)})`);
  }
  return named ? rows.slice(1) : rows;
}

/**
 * The separator that cuts most lines into the same number of cells. A comma that may be a decimal one loses against
 * any other that serves as well.
 */
function separatorOf(text: string): string {
  const lines = text
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== "")
    .slice(0, SAMPLED_LINES);
  let best = { separator: ",", agreeing: 0 };
  for (const separator of SEPARATORS) {
    const counts = new Map<number, number>();
    for (const line of lines) {
      const cells = line.replaceAll(/"[^"]*"/g, "").split(separator).length;
      if (cells > 1) counts.set(cells, (counts.get(cells) ?? 0) + 1);
    }
    const agreeing = Math.max(0, ...counts.values());
    if (agreeing > best.agreeing) best = { separator, agreeing };
  }
  return best.separator;
}

const notALog = (found: string): BadInput =>
  new BadInput({
    code: "not-a-log",
    path: "",
    found,
    expected: "a temperature log as CSV: a header row, then one reading a row",
  });
