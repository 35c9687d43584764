import { type ClockReading, clockText, type DateOrder, openDate, readClock } from "./clock.ts";
import { LONGEST_H } from "./firing-length.ts";
import type { LogOptions, LogQuestion } from "./log-reading.ts";
import type { LogTimes } from "./row-times.ts";

/** The times of cells with a date in them. */
export function clockTimes(cells: readonly string[], options: LogOptions): LogTimes | LogQuestion {
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
