import { clockText } from "./clock.ts";
import { LONGEST_H, SHORTEST_H } from "./firing-length.ts";
import type { LogColumn } from "./log-columns.ts";
import { decimalMarkOf, readNumber } from "./log-numbers.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";
import type { LogTimes } from "./row-times.ts";

const UNITS = { seconds: 1 / 60, minutes: 1, hours: 60 } as const;
type TimeUnit = keyof typeof UNITS;

/** Seconds and milliseconds since 1970, and a spreadsheet's days since 1900, stand in these ranges today. */
const since1970 = (value: number): number | null =>
  value > 1e9 && value < 5e9 ? value / 60 : value > 1e12 && value < 5e12 ? value / 60_000 : null;
const spreadsheetDay = (value: number): number | null =>
  value > 36_000 && value < 66_000 ? (value - 25_569) * 1440 : null;

/** The times of cells that are bare numbers: counted since the start, or since 1970 or 1900. */
export function numberTimes(cells: readonly string[], column: LogColumn, options: LogOptions): LogTimes | LogQuestion {
  const mark = decimalMarkOf(cells);
  const values = Float64Array.from(cells, (cell) => readNumber(cell, mark));
  const filled = values.filter(Number.isFinite);
  const [first, last] = [filled[0] ?? 0, filled.at(-1) ?? 0];
  const unit = options.timeUnit ?? column.timeUnit;
  if (unit === null) {
    for (const [asClock, clock, what] of [
      [since1970, "zoned", "seconds since 1970"],
      [spreadsheetDay, "local", "a spreadsheet's days"],
    ] as const) {
      const start = asClock(first);
      if (start === null || asClock(last) === null || last - first > 1e9) continue;
      const minutes = Float64Array.from(values, (value) => asClock(value) ?? Number.NaN);
      const startedAt = clockText(start) + (clock === "zoned" ? "Z" : "");
      return { kind: "times", minutes, clock, startedAt, notes: [`"${column.name}" was read as ${what}.`] };
    }
  }
  const lengths = (Object.keys(UNITS) as TimeUnit[]).map((each) => ({
    unit: each,
    hours: ((last - first) * UNITS[each]) / 60,
  }));
  const plausible = lengths.filter(({ hours }) => hours >= SHORTEST_H && hours <= LONGEST_H);
  const taken = unit ?? (plausible.length === 1 ? (plausible[0] as (typeof lengths)[number]).unit : null);
  if (taken === null) {
    const offered = plausible.length > 1 ? plausible : lengths;
    return {
      kind: "question",
      about: "timeUnit",
      question: `Is "${column.name}", which goes from ${first} to ${last}, in seconds, minutes or hours?`,
      choices: offered.map((each) => ({
        option: { timeUnit: each.unit },
        means: `${each.unit}; the log is ${each.hours.toFixed(1)} hours long`,
      })),
    };
  }
  const notes = unit === null ? [`"${column.name}" was read as ${taken}: only so is the log as long as a firing.`] : [];
  return { kind: "times", minutes: values.map((value) => value * UNITS[taken]), clock: "none", startedAt: null, notes };
}
