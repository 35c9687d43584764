import { type ClockReading, clockText, type DateOrder, openDate, readClock, readTimeOnly } from "./clock.ts";
import type { CsvRow } from "./csv-rows.ts";
import type { LogColumn, LogTable } from "./log-columns.ts";
import { decimalMarkOf, readNumber } from "./log-numbers.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";

/** The time of every row, as its column has it. */
export interface LogTimes {
  readonly kind: "times";
  /** Minutes, of a clock or since the start; NaN where the cell is no time. */
  readonly minutes: Float64Array;
  /** What makes them: a clock that runs past midnight or jumps, or a count that does not. */
  readonly clock: "none" | "without-date" | "local" | "zoned";
  /** First date and time, ISO 8601, where it is sure. */
  readonly startedAt: string | null;
  readonly notes: readonly string[];
}

type Content = "date-and-time" | "time-only" | "number" | "other";

/** A firing lasts between these, hours. Outside them a unit of time is not what it was taken for. */
const SHORTEST_H = 1;
const LONGEST_H = 120;

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

function clockTimes(cells: readonly string[], options: LogOptions): LogTimes | LogQuestion {
  const order = dateOrderOf(cells, options);
  if (typeof order !== "string" && order !== null) return order;
  const readings = cells.map((cell) => readClock(cell, order ?? "day-first"));
  const first = readings.find((reading) => reading !== null) as ClockReading;
  const notes =
    order === null
      ? [
          `The date ${cells.find((cell) => cell !== "")} can be read two ways; the hours do not depend on it, the day was left open.`,
        ]
      : [];
  return {
    kind: "times",
    minutes: Float64Array.from(readings, (reading) => reading?.minutes ?? Number.NaN),
    clock: readings.every((reading) => reading === null || reading.zoned) ? "zoned" : "local",
    startedAt: order === null ? null : clockText(first.minutes) + (first.zoned ? "Z" : ""),
    notes,
  };
}

/**
 * Which number of a date is the day: told by a number above 12, or by the order in which the log's days follow one
 * another. Null where both orders give the same hours, a question where they do not.
 */
function dateOrderOf(cells: readonly string[], options: LogOptions): DateOrder | LogQuestion | null {
  const open = cells.map(openDate).filter((date) => date !== null);
  if (open.length === 0) return "day-first";
  if (open.some((date) => date.first > 12)) return "day-first";
  if (open.some((date) => date.second > 12)) return "month-first";
  if (options.dateOrder) return options.dateOrder;
  if (open.every((date) => date.first === date.second)) return "day-first";
  const [dayFirst, monthFirst] = (["day-first", "month-first"] as const).map((order) => spanHours(cells, order)) as [
    number,
    number,
  ];
  if (Math.abs(dayFirst - monthFirst) < 1e-6) return null;
  const [dayFits, monthFits] = [dayFirst, monthFirst].map((hours) => hours >= 0 && hours <= LONGEST_H);
  if (dayFits !== monthFits) return dayFits ? "day-first" : "month-first";
  const example = cells.find((cell) => openDate(cell) !== null) as string;
  return {
    kind: "question",
    about: "dateOrder",
    question: `Which is the day in ${example}?`,
    choices: [
      { option: { dateOrder: "day-first" }, means: `the first number; the log is ${dayFirst.toFixed(1)} hours long` },
      {
        option: { dateOrder: "month-first" },
        means: `the second number; the log is ${monthFirst.toFixed(1)} hours long`,
      },
    ],
  };
}

function spanHours(cells: readonly string[], order: DateOrder): number {
  const minutes = cells.map((cell) => readClock(cell, order)?.minutes ?? Number.NaN).filter(Number.isFinite);
  return ((minutes.at(-1) ?? 0) - (minutes[0] ?? 0)) / 60;
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

const UNITS = { seconds: 1 / 60, minutes: 1, hours: 60 } as const;
type TimeUnit = keyof typeof UNITS;

/** Seconds and milliseconds since 1970, and a spreadsheet's days since 1900, stand in these ranges today. */
const since1970 = (value: number): number | null =>
  value > 1e9 && value < 5e9 ? value / 60 : value > 1e12 && value < 5e12 ? value / 60_000 : null;
const spreadsheetDay = (value: number): number | null =>
  value > 36_000 && value < 66_000 ? (value - 25_569) * 1440 : null;

function numberTimes(cells: readonly string[], column: LogColumn, options: LogOptions): LogTimes | LogQuestion {
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
