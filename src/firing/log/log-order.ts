import type { CsvRow } from "./csv-rows.ts";
import { firingsIn, runsAhead, whichFiring } from "./firings.ts";
import type { Dropped, LogOptions, LogQuestion } from "./log-reading.ts";
import { askMissingHour, isMissingHour, missingHour } from "./missing-hour.ts";
import type { LogTimes } from "./row-times.ts";

export interface OrderedLog {
  readonly kind: "ordered";
  /** Rows kept, by place, in order of time. */
  readonly kept: readonly number[];
  /** Minutes since the first kept reading, one for each kept row. */
  readonly minutes: Float64Array;
  readonly dropped: readonly Dropped[];
  readonly notes: readonly string[];
}

const HOUR = 60;
const DAY = 1440;

/**
 * Puts readings in order of time: past midnight, over a clock put back or forward, out with repeats and with times
 * that run backwards.
 *
 * @param tempC one probe's readings, to judge by them whether a missing hour passed in the kiln
 */
export function orderLog(
  times: LogTimes,
  rows: readonly CsvRow[],
  tempC: Float64Array,
  options: LogOptions,
): OrderedLog | LogQuestion {
  const firings = firingsIn(times);
  if (firings.length > 1 && options.firing === undefined) return whichFiring(firings, times, rows);
  const [from, until] = firings[Math.min(firings.length, options.firing ?? 1) - 1] as readonly [number, number];
  const typical = typicalStep(times.minutes.subarray(from, until));
  const kept: number[] = [];
  const minutes: number[] = [];
  const dropped: Dropped[] = [];
  const notes: string[] = [];
  let shift = 0;
  for (let i = from; i < until; i++) {
    const row = rows[i] as CsvRow;
    const raw = times.minutes[i] as number;
    if (!Number.isFinite(raw)) {
      dropped.push({ line: row.line, found: row.cells.join(" "), why: "no time that can be read" });
      continue;
    }
    const last = minutes.at(-1);
    let step = last === undefined ? 0 : raw + shift - last;
    if (times.clock === "without-date" && step < -DAY / 2) {
      shift += DAY;
      step += DAY;
    }
    if (times.clock === "local" || times.clock === "without-date") {
      if (step < 0 && step + HOUR > 0 && step + HOUR <= 3 * typical + 1) {
        shift += HOUR;
        step += HOUR;
        notes.push(`Line ${row.line}: the clock was put back an hour; the firing went on.`);
      } else if (isMissingHour(step, typical)) {
        const verdict = options.missingHour ?? missingHour(tempC, kept, i, step, typical);
        if (verdict === null) return askMissingHour(row);
        if (verdict === "clock-change") {
          shift -= HOUR;
          step -= HOUR;
          notes.push(`Line ${row.line}: the clock was put forward an hour; none passed in the kiln.`);
        }
      }
    }
    const ahead = last !== undefined && runsAhead(times.minutes, i, last - shift);
    if (last !== undefined && (step <= 0 || ahead)) {
      const why = ahead
        ? "its time is after that of the readings below"
        : step === 0
          ? "a second reading at the same time"
          : "its time is before that of the reading above";
      dropped.push({ line: row.line, found: row.cells.join(" "), why });
      continue;
    }
    kept.push(i);
    minutes.push(raw + shift);
  }
  const start = minutes[0] ?? 0;
  const since = Float64Array.from(minutes, (minute) => minute - start);
  notes.push(...gapNotes(since, kept, rows, typical));
  return { kind: "ordered", kept, minutes: since, dropped, notes };
}

/** The usual time between readings: the median of the steps forward, minutes. */
export function typicalStep(minutes: Float64Array): number {
  const steps: number[] = [];
  for (let i = 1; i < minutes.length; i++) {
    const step = (minutes[i] as number) - (minutes[i - 1] as number);
    if (step > 0) steps.push(step);
  }
  steps.sort((a, b) => a - b);
  return steps[Math.floor(steps.length / 2)] ?? 1;
}

/** A stretch without readings worth telling of: ten times the usual step, and a quarter of an hour. */
function gapNotes(minutes: Float64Array, kept: readonly number[], rows: readonly CsvRow[], typical: number): string[] {
  const notes: string[] = [];
  for (let i = 1; i < minutes.length; i++) {
    const step = (minutes[i] as number) - (minutes[i - 1] as number);
    if (step < Math.max(15, 10 * typical)) continue;
    const [before, after] = [rows[kept[i - 1] as number] as CsvRow, rows[kept[i] as number] as CsvRow];
    notes.push(
      `No reading for ${step.toFixed(0)} minutes between lines ${before.line} and ${after.line}; a straight line is assumed.`,
    );
  }
  return notes;
}
