import { BadInput } from "../../measures/bad-input.ts";
import { celsiusFromFahrenheit } from "../../measures/temperature.ts";
import type { CsvRow } from "./csv-rows.ts";
import type { LogColumn, LogTable } from "./log-columns.ts";
import { decimalMarkOf, readNumber } from "./log-numbers.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";

export interface ProbeColumn {
  readonly name: string;
  readonly place: number;
  /** °C for each row; NaN where the cell is no temperature. */
  readonly tempC: Float64Array;
}

export interface LogTemperatures {
  readonly kind: "temperatures";
  readonly probes: readonly ProbeColumn[];
  readonly notes: readonly string[];
}

/** No kiln of a studio is hotter, °C: what is, was another unit, or an instrument's sign for a broken probe. */
export const HOTTEST_C = 1450;
const BROKEN_C = 1800;
/** From here on a number stands for a broken probe: 9999, 32767. */
const NO_READING = 4000;
/** A room is no colder; a firing that got no hotter was none. */
const COLDEST_ROOM_C = 4;
const COOLEST_FIRING_C = 540;

/** Finds the columns that are temperatures in the kiln, and their unit. */
export function logTemperatures(table: LogTable, options: LogOptions): LogTemperatures | LogQuestion {
  const columns = probeColumns(table, options);
  if (!Array.isArray(columns)) return columns as LogQuestion;
  const raw = columns.map((column) => ({ column, ...numbersOf(table.rows, column) }));
  const unit = unitOf(table, raw, options);
  if (typeof unit !== "string" && "kind" in unit) return unit;
  const named = typeof unit === "string" ? unit : unit.unit;
  const notes = typeof unit === "string" ? [] : [unit.note];
  const probes = raw.map(({ column, values, unit: own }) => ({
    name: column.name,
    place: column.place,
    tempC: values.map((value) =>
      inRange((own ?? column.temperatureUnit ?? named) === "F" ? celsiusFromFahrenheit(value) : value),
    ),
  }));
  const others = table.columns.filter((column) => isOther(column, columns) && hasNumbers(table.rows, column));
  if (others.length > 0) {
    notes.push(
      `Not read, being no temperature of the kiln by name: ${others.map(({ name }) => `"${name}"`).join(", ")}.`,
    );
  }
  return { kind: "temperatures", probes: probes.filter(({ tempC }) => tempC.some(Number.isFinite)), notes };
}

const inRange = (celsius: number): number => (celsius > -40 && celsius <= BROKEN_C ? celsius : Number.NaN);

const isOther = (column: LogColumn, chosen: readonly LogColumn[]): boolean =>
  !chosen.includes(column) && column.role !== "time" && column.role !== "date";

const hasNumbers = (rows: readonly CsvRow[], column: LogColumn): boolean =>
  rows.slice(0, 50).some((row) => /^[-+−]?\d/.test(row.cells[column.place] ?? ""));

function probeColumns(table: LogTable, options: LogOptions): LogColumn[] | LogQuestion {
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

interface RawColumn {
  readonly column: LogColumn;
  readonly values: Float64Array;
  readonly unit: "C" | "F" | null;
}

/** A column's numbers, and the unit where its cells carry one: `1222 °C`, `74F`. */
function numbersOf(rows: readonly CsvRow[], column: LogColumn): { values: Float64Array; unit: "C" | "F" | null } {
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

/** The unit for columns that do not name theirs: from a unit column or the lines above, or the only one possible. */
function unitOf(
  table: LogTable,
  raw: readonly RawColumn[],
  options: LogOptions,
): "C" | "F" | { readonly unit: "C" | "F"; readonly note: string } | LogQuestion {
  const unnamed = raw.filter(({ column, unit }) => column.temperatureUnit === null && unit === null);
  if (unnamed.length === 0) return "C";
  if (options.temperature) return options.temperature;
  const neighbours = new Set(
    raw.map(({ column, unit }) => column.temperatureUnit ?? unit).filter((unit) => unit !== null),
  );
  if (neighbours.size === 1) return [...neighbours][0] as "C" | "F";
  const written = writtenUnit(table);
  if (written) return { unit: written, note: `°${written} is what the file itself says.` };
  const values = unnamed.map(({ values }) => values.filter((value) => value < NO_READING));
  const first = values[0]?.[0] ?? Number.NaN;
  const peak = values.reduce((most, each) => each.reduce((a, b) => Math.max(a, b), most), Number.NEGATIVE_INFINITY);
  const canBeC = peak <= HOTTEST_C;
  const peakIfF = celsiusFromFahrenheit(peak);
  const canBeF = celsiusFromFahrenheit(first) >= COLDEST_ROOM_C && peakIfF >= COOLEST_FIRING_C && peakIfF <= HOTTEST_C;
  if (!canBeC && !canBeF) {
    const found = `temperatures from ${first} to ${peak}`;
    throw new BadInput({
      code: "no-temperature",
      path: unnamed[0]?.column.name ?? "",
      found,
      expected: `a kiln's temperatures, up to ${HOTTEST_C} °C`,
    });
  }
  if (canBeC !== canBeF) {
    const unit = canBeC ? "C" : "F";
    return { unit, note: `Read as °${unit}: from ${first} to ${peak} no firing goes in the other unit.` };
  }
  const inC = (value: number): string => `${celsiusFromFahrenheit(value).toFixed(0)} °C`;
  return {
    kind: "question",
    about: "temperature",
    question: `Are the temperatures °C or °F? They go from ${first} to ${peak}.`,
    choices: [
      { option: { temperature: "C" }, means: `a firing to ${peak} °C` },
      { option: { temperature: "F" }, means: `a firing to ${peak} °F, which is ${inC(peak)}` },
    ],
  };
}

function writtenUnit(table: LogTable): "C" | "F" | null {
  const unitColumn = table.columns.find((column) => /^units?$/i.test(column.name));
  const said = unitColumn
    ? table.rows.map((row) => row.cells[unitColumn.place] ?? "")
    : table.preamble.filter((row) => /unit|°|temp/i.test(row.cells.join(" "))).map((row) => row.cells.join(" "));
  const units = new Set(
    said
      .map((text) => /(?:^|[\s:=°("])(?:deg\s*)?(C|F|celsius|fahrenheit)\b/i.exec(text)?.[1]?.[0]?.toUpperCase())
      .filter(Boolean),
  );
  return units.size === 1 ? ([...units][0] as "C" | "F") : null;
}
