import type { CsvRow } from "./csv-rows.ts";
import type { LogQuestion } from "./log-reading.ts";
import type { LogTimes } from "./row-times.ts";

const HOUR = 60;
/** Longer without a reading, and what follows is another firing, minutes. */
const APART_MIN = 24 * HOUR;

/** True where the next readings all lie before a moment: more than one slip of the clock. */
const staysBelow = (minutes: Float64Array, from: number, moment: number): boolean =>
  minutes.subarray(from, from + 4).every((minute) => minute < moment);

/** True for one slip of the clock forward: the next readings all lie between the last one and this. */
export function runsAhead(minutes: Float64Array, at: number, last: number): boolean {
  const next = minutes.subarray(at + 1, at + 4);
  return next.length > 0 && next.every((minute) => minute < (minutes[at] as number) && minute >= last);
}

/** Stretches of rows that are firings of their own: a count that begins again, or more than a day without a reading. */
export function firingsIn({ minutes, clock }: LogTimes): (readonly [number, number])[] {
  const firings: (readonly [number, number])[] = [];
  let from = 0;
  let last = Number.NaN;
  for (let i = 0; i < minutes.length; i++) {
    const minute = minutes[i] as number;
    if (!Number.isFinite(minute) || runsAhead(minutes, i, last)) continue;
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

/** Asks which of several firings is meant. */
export function whichFiring(
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
