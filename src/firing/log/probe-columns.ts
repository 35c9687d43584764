import { BadInput } from "../../measures/bad-input.ts";
import type { CsvRow } from "./csv-rows.ts";
import type { LogColumn, LogTable } from "./log-columns.ts";
import { decimalMarkOf, readNumber } from "./log-numbers.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";

/** The columns that are temperatures in the kiln: by name, by choice, or the only one it can be. */
export function probeColumns(table: LogTable, options: LogOptions): LogColumn[] | LogQuestion {
  if (options.probes) {
    return options.probes.map((name) => {
      const column = table.columns.find((each) => each.name === name);
      if (column) return column;
      const all = table.columns.map((each) => `"${each.name}"`).join(", ");
      throw new BadInput({
        code: "unknown-column",
        path: "probes",
        found: `"${name}"`,
        expected: `a column of the log: ${all}`,
      });
    });
  }
  const named = table.columns.filter((column) => column.role === "temperature");
  if (named.length > 0) return named;
  const headed = table.columns.some((column) => column.role === "time" || column.role === "date");
  const open = table.columns
    .filter((column) => column.role === "unknown" && hasNumbers(table.rows, column))
    .slice(headed ? 0 : 1);
  if (open.length === 1) return open;
  if (open.length === 0) {
    const found = `the columns ${table.columns.map((column) => `"${column.name}"`).join(", ")}`;
    throw new BadInput({
      code: "no-temperature",
      path: "header",
      found,
      expected: "a column of temperatures, such as tempC or tempF",
    });
  }
  return {
    kind: "question",
    about: "probes",
    question: "Which column is the temperature in the kiln?",
    choices: open.map((column) => ({
      option: { probes: [column.name] },
      means: `"${column.name}", ${rangeOf(table.rows, column)}`,
    })),
  };
}

function rangeOf(rows: readonly CsvRow[], column: LogColumn): string {
  const values = numbersOf(rows, column).values.filter(Number.isFinite);
  return `from ${values.reduce((a, b) => Math.min(a, b), Infinity)} to ${values.reduce((a, b) => Math.max(a, b), -Infinity)}`;
}

/** True for a column with numbers near its top. */
export const hasNumbers = (rows: readonly CsvRow[], column: LogColumn): boolean =>
  rows.slice(0, 50).some((row) => /^[-+−]?\d/.test(row.cells[column.place] ?? ""));

/** A column with its numbers, and the unit its cells carry. */
export interface RawColumn {
  readonly column: LogColumn;
  readonly values: Float64Array;
  readonly unit: "C" | "F" | null;
}

/** A column's numbers, and the unit where its cells carry one: `1222 °C`, `74F`. */
export function numbersOf(
  rows: readonly CsvRow[],
  column: LogColumn,
): { values: Float64Array; unit: "C" | "F" | null } {
  let unit: "C" | "F" | null = null;
  const cells = rows.map((row) => {
    const cell = row.cells[column.place] ?? "";
    const match = /^(.*\d)\s*°?\s*(?:deg\.?\s*)?([CF])$/i.exec(cell);
    if (!match) return cell;
    unit ??= (match[2] as string).toUpperCase() as "C" | "F";
    return (match[1] as string).trim();
  });
  const mark = decimalMarkOf(cells);
  return { values: Float64Array.from(cells, (cell) => readNumber(cell, mark)), unit };
}
