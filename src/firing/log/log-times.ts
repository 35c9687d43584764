import { readClock, readTimeOnly } from "./clock.ts";
import { clockTimes } from "./clock-times.ts";
import type { CsvRow } from "./csv-rows.ts";
import { LONGEST_H, SHORTEST_H } from "./firing-length.ts";
import type { LogColumn, LogTable } from "./log-columns.ts";
import { decimalMarkOf, readNumber } from "./log-numbers.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";
import { numberTimes } from "./number-times.ts";
import type { LogTimes } from "./row-times.ts";

type Content = "date-and-time" | "time-only" | "number" | "other";

const cellsOf = (rows: readonly CsvRow[], column: LogColumn): string[] =>
  rows.map((row) => row.cells[column.place] ?? "");

/** Finds the time of every row: elapsed or of a clock, in one column or two. */
export function logTimes(table: LogTable, options: LogOptions): LogTimes | LogQuestion | null {
  const named = table.columns.filter((column) => column.role === "time" || column.role === "date");
  const candidates = named.length > 0 ? named : table.columns.slice(0, 1);
  const sorted = candidates.map((column) => {
    const cells = cellsOf(table.rows, column);
    return { column, cells, content: contentOf(cells) };
  });
  const of = (content: Content) => sorted.find((each) => each.content === content);
  const counted = sorted.find((each) => each.content === "number" && each.column.timeUnit !== null);
  const elapsed = sorted.find((each) => each.content === "time-only" && /elapsed|runtime/i.test(each.column.name));
  const dated = of("date-and-time");
  const timeOnly = of("time-only");
  const chosen = counted ?? elapsed ?? dated ?? timeOnly ?? of("number");
  if (!chosen) return null;
  if (chosen === dated && timeOnly && dated.cells.every((cell) => !cell.includes(":"))) {
    const joined = dated.cells.map((cell, i) => `${cell} ${timeOnly.cells[i] ?? ""}`.trim());
    return clockTimes(joined, options);
  }
  if (chosen.content === "date-and-time") return clockTimes(chosen.cells, options);
  if (chosen.content === "time-only") return timeOnlyTimes(chosen.cells, chosen.column, options);
  return numberTimes(chosen.cells, chosen.column, options);
}

function contentOf(cells: readonly string[]): Content {
  const filled = cells.filter((cell) => cell !== "").slice(0, 200);
  const most = (test: (cell: string) => boolean): boolean => filled.filter(test).length > filled.length / 2;
  if (most((cell) => readClock(cell, "day-first") !== null || readClock(cell, "month-first") !== null))
    return "date-and-time";
  if (most((cell) => readTimeOnly(cell) !== null)) return "time-only";
  const mark = decimalMarkOf(filled);
  return most((cell) => Number.isFinite(readNumber(cell, mark))) ? "number" : "other";
}

function timeOnlyTimes(cells: readonly string[], column: LogColumn, options: LogOptions): LogTimes | LogQuestion {
  const read = (twoNumbers: "h:mm" | "m:ss"): Float64Array =>
    Float64Array.from(cells, (cell) => readTimeOnly(cell, twoNumbers) ?? Number.NaN);
  const done = (minutes: Float64Array): LogTimes => ({
    kind: "times",
    minutes,
    clock: "without-date",
    startedAt: null,
    notes: [],
  });
  if (!cells.some((cell) => /^\d+:\d\d$/.test(cell))) return done(read("h:mm"));
  const unit = options.timeUnit ?? column.timeUnit;
  if (unit !== null) return done(read(unit === "hours" ? "h:mm" : "m:ss"));
  const choices = (["h:mm", "m:ss"] as const).map((twoNumbers) => {
    const minutes = read(twoNumbers);
    return { twoNumbers, minutes, hours: lengthHours(minutes) };
  });
  const plausible = choices.filter(({ hours }) => hours >= SHORTEST_H && hours <= LONGEST_H);
  if (plausible.length === 1) return done((plausible[0] as (typeof choices)[number]).minutes);
  const example = cells.find((cell) => cell !== "");
  return {
    kind: "question",
    about: "timeUnit",
    question: `Is a time such as ${example} hours and minutes, or minutes and seconds?`,
    choices: choices.map(({ twoNumbers, hours }) => ({
      option: { timeUnit: twoNumbers === "h:mm" ? "hours" : "minutes" },
      means: `${twoNumbers === "h:mm" ? "hours and minutes" : "minutes and seconds"}; the log is ${hours.toFixed(1)} hours long`,
    })),
  };
}

/** Length of times that may pass midnight, hours. */
function lengthHours(minutes: Float64Array): number {
  let total = 0;
  let last = Number.NaN;
  for (const minute of minutes) {
    if (!Number.isFinite(minute)) continue;
    if (Number.isFinite(last)) total += minute - last < -720 ? minute - last + 1440 : minute - last;
    last = minute;
  }
  return total / 60;
}
