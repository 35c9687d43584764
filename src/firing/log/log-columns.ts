import { BadInput } from "../../measures/bad-input.ts";
import type { CsvRow } from "./csv-rows.ts";

/** What a column of a log is, by its name. */
export type ColumnRole = "date" | "time" | "temperature" | "left-out" | "unknown";

export interface LogColumn {
  readonly place: number;
  readonly name: string;
  readonly role: ColumnRole;
  /** The unit its name gives, where it gives one. */
  readonly timeUnit: "seconds" | "minutes" | "hours" | null;
  readonly temperatureUnit: "C" | "F" | null;
}

export interface LogTable {
  readonly columns: readonly LogColumn[];
  readonly rows: readonly CsvRow[];
  /** What stood above the header. */
  readonly preamble: readonly CsvRow[];
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(" "));
const LEFT_OUT = words(
  "set setpoint sp target soll sollwert consigne program programme power duty output out percent amps amp current volts volt watts watt kwh energy status state segment step index no nr record id humidity ambient junction cj board error err note notes comment event alarm",
);
const DATE = words("date datum fecha day");
const TIME = words("time timestamp datetime clock elapsed zeit uhrzeit heure temps hora tiempo runtime");
const TEMPERATURE = words(
  "temp temperature temperatur température temperatura probe thermocouple tc pv kiln zone chamber top middle bottom sensor channel ch ist istwert c f degc degf celsius fahrenheit",
);
const SECONDS = words("s sec secs second seconds sekunden");
const MINUTES = words("min mins minute minutes minuten");
const HOURS = words("h hr hrs hour hours stunden");
const CELSIUS = words("c degc celsius");
const FAHRENHEIT = words("f degf fahrenheit");

/** Splits a name into lower-case words: `elapsedMin`, `Temp_F`, `Zone 1 (°C)`. */
const wordsOf = (name: string): string[] =>
  name
    .replaceAll(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .replaceAll(/(\p{L})(\d)/gu, "$1 $2")
    .toLowerCase()
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== "");

/** What a column is, judged by its name alone. */
export function columnNamed(name: string, place: number): LogColumn {
  const found = wordsOf(name);
  const has = (list: ReadonlySet<string>): boolean => found.some((word) => list.has(word));
  const timeUnit = has(SECONDS) ? "seconds" : has(MINUTES) ? "minutes" : has(HOURS) ? "hours" : null;
  const temperatureUnit = has(CELSIUS) ? "C" : has(FAHRENHEIT) ? "F" : null;
  const role = (): ColumnRole => {
    if (has(LEFT_OUT) || name.trim() === "#" || name.includes("%")) return "left-out";
    if (has(TIME)) return "time";
    if (has(DATE)) return "date";
    if (has(TEMPERATURE)) return "temperature";
    return timeUnit === null ? "unknown" : "time";
  };
  return {
    place,
    name: name.trim() === "" ? `column ${place + 1}` : name.trim(),
    role: role(),
    timeUnit,
    temperatureUnit,
  };
}

const looksMeasured = (cell: string): boolean => /^[-+−]?\d/.test(cell);

/**
 * Finds the header: the last row, before the first three rows of readings, that has as many cells as they and none
 * that begins with a number.
 *
 * @returns null where no run of readings is found
 */
export function logTable(rows: readonly CsvRow[]): LogTable | null {
  const isReading = (row: CsvRow | undefined): boolean =>
    row !== undefined && row.cells.filter(looksMeasured).length >= 2;
  const first = rows.findIndex((_, i) => isReading(rows[i]) && (isReading(rows[i + 1]) || i + 1 === rows.length));
  if (first < 0) return null;
  const width = (rows[first] as CsvRow).cells.length;
  let header = first - 1;
  while (header >= 0 && !isHeader(rows[header] as CsvRow)) header--;
  const names = header < 0 ? [] : (rows[header] as CsvRow).cells;
  if (header >= 0) refuseExtraCells(rows.slice(first), names);
  const columns = Array.from({ length: Math.max(width, names.length) }, (_, i) => columnNamed(names[i] ?? "", i));
  return { columns, rows: rows.slice(first), preamble: rows.slice(0, Math.max(0, header)) };
}

/** Rows with more cells than names: commas stand for decimals and between columns alike. */
function refuseExtraCells(rows: readonly CsvRow[], names: readonly string[]): void {
  const wider = rows.filter((row) => row.cells.slice(names.length).some((cell) => cell !== ""));
  if (wider.length <= rows.length / 2) return;
  const { line, cells } = wider[0] as CsvRow;
  throw new BadInput({
    code: "more-cells-than-names",
    path: `line ${line}`,
    found: `${cells.length} cells where the header names ${names.length} columns`,
    expected: "a name for every column; with decimal commas, columns apart by semicolons or in quotes",
  });
}

const isHeader = (row: CsvRow): boolean =>
  row.cells.filter((cell) => cell !== "").length >= 2 && !row.cells.some(looksMeasured);
