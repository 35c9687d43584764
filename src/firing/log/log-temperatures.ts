import { celsiusFromFahrenheit } from "../../measures/temperature.ts";
import type { LogColumn, LogTable } from "./log-columns.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";
import { hasNumbers, numbersOf, probeColumns } from "./probe-columns.ts";
import { refuseWrongUnit, unitOf } from "./temperature-unit.ts";

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

/** Finds the columns that are temperatures in the kiln, and their unit. */
export function logTemperatures(table: LogTable, options: LogOptions): LogTemperatures | LogQuestion {
  const columns = probeColumns(table, options);
  if (!Array.isArray(columns)) return columns as LogQuestion;
  const raw = columns.map((column) => ({ column, ...numbersOf(table.rows, column) }));
  const unit = unitOf(table, raw, options);
  if (typeof unit !== "string" && "kind" in unit) return unit;
  const named = typeof unit === "string" ? unit : unit.unit;
  const notes = typeof unit === "string" ? [] : [unit.note];
  const probes = raw.map(({ column, values, unit: own }) => {
    const unit = own ?? column.temperatureUnit ?? named;
    refuseWrongUnit(column.name, unit, values);
    return {
      name: column.name,
      place: column.place,
      tempC: values.map((value) => inRange(unit === "F" ? celsiusFromFahrenheit(value) : value)),
    };
  });
  const others = table.columns.filter((column) => isOther(column, columns) && hasNumbers(table.rows, column));
  if (others.length > 0) {
    notes.push(
      `Not read, being no temperature of the kiln by name: ${others.map(({ name }) => `"${name}"`).join(", ")}.`,
    );
  }
  return { kind: "temperatures", probes: probes.filter(({ tempC }) => tempC.some(Number.isFinite)), notes };
}

/** Beyond these an instrument tells of a broken probe, °C. */
const BROKEN_ABOVE_C = 1800;
const BROKEN_BELOW_C = -40;
const inRange = (celsius: number): number =>
  celsius > BROKEN_BELOW_C && celsius <= BROKEN_ABOVE_C ? celsius : Number.NaN;

const isOther = (column: LogColumn, chosen: readonly LogColumn[]): boolean =>
  !chosen.includes(column) && column.role !== "time" && column.role !== "date";
