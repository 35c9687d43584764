import type { CsvRow } from "./csv-rows.ts";
import type { Dropped, LogOptions, LogQuestion } from "./log-reading.ts";
import type { LogTimes } from "./log-times.ts";

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
/** Longer without a reading, and what follows is another firing. */
const APART_MIN = DAY;

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
    if (last !== undefined && step <= 0) {
      const why = step === 0 ? "a second reading at the same time" : "its time is before that of the reading above";
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

/** True where this and the next readings all lie before a moment: a count begun again, not one slip. */
const staysBelow = (minutes: Float64Array, from: number, moment: number): boolean =>
  minutes.subarray(from, from + 4).every((minute) => minute < moment);

/** Stretches of rows that are firings of their own: a count that begins again, or more than a day without a reading. */
function firingsIn({ minutes, clock }: LogTimes): (readonly [number, number])[] {
  const firings: (readonly [number, number])[] = [];
  let from = 0;
  let last = Number.NaN;
  for (let i = 0; i < minutes.length; i++) {
    const minute = minutes[i] as number;
    if (!Number.isFinite(minute)) continue;
    const first = minutes[from] as number;
    const restarts =
      clock === "none" && minute - first < (last - first) / 10 && last - first > HOUR && staysBelow(minutes, i, last);
    if (restarts || minute - last > APART_MIN) {
      firings.push([from, i]);
      from = i;
    }
    last = minute;
  }
  firings.push([from, minutes.length]);
  return firings.filter(([start, end]) => end - start > 3 || firings.length === 1);
}

function whichFiring(
  firings: readonly (readonly [number, number])[],
  times: LogTimes,
  rows: readonly CsvRow[],
): LogQuestion {
  return {
    kind: "question",
    about: "firing",
    question: `The file holds ${firings.length} firings. Which one?`,
    choices: firings.map(([from, until], i) => {
      const hours = ((times.minutes[until - 1] as number) - (times.minutes[from] as number)) / 60;
      const lines = `lines ${(rows[from] as CsvRow).line} to ${(rows[until - 1] as CsvRow).line}`;
      return { option: { firing: i + 1 }, means: `${lines}, ${hours.toFixed(1)} hours` };
    }),
  };
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

const isMissingHour = (step: number, typical: number): boolean =>
  typical <= 20 && Math.abs(step - HOUR - typical) <= Math.max(0.5, typical / 2);

/** Degrees by which the two readings of a missing hour have to differ before the kiln itself can tell. */
const TELLING_C = 8;

/** Whether a missing hour passed in the kiln, by what the temperature did around it; null where that does not tell. */
function missingHour(
  tempC: Float64Array,
  kept: readonly number[],
  next: number,
  step: number,
  typical: number,
): "clock-change" | "no-readings" | null {
  const back = kept.slice(-6).map((place) => tempC[place] as number);
  const ahead = Array.from(tempC.subarray(next, next + 6));
  if (back.length < 3 || ahead.length < 3 || ![...back, ...ahead].every(Number.isFinite)) return null;
  const slope = (run: readonly number[]): number =>
    ((run.at(-1) as number) - (run[0] as number)) / ((run.length - 1) * typical);
  const pace = (slope(back) + slope(ahead)) / 2;
  const jump = (ahead[0] as number) - (back.at(-1) as number);
  const [missed, missedIfHour] = [Math.abs(jump - pace * typical), Math.abs(jump - pace * step)];
  if (Math.abs(pace * HOUR) < TELLING_C) return null;
  return missed < missedIfHour ? "clock-change" : "no-readings";
}

const askMissingHour = (row: CsvRow): LogQuestion => ({
  kind: "question",
  about: "missingHour",
  question: `An hour is missing before line ${row.line}. Was the clock put forward?`,
  choices: [
    { option: { missingHour: "clock-change" }, means: "yes, for summer time; none passed in the kiln" },
    { option: { missingHour: "no-readings" }, means: "no; the hour passed without readings" },
  ],
});

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
