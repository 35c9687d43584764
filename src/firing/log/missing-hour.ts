import type { CsvRow } from "./csv-rows.ts";
import type { LogQuestion } from "./log-reading.ts";

const HOUR = 60;

/** True for a step that is the usual one and an hour more. */
export const isMissingHour = (step: number, typical: number): boolean =>
  typical <= 20 && Math.abs(step - HOUR - typical) <= Math.max(0.5, typical / 2);

/** Degrees by which the two readings of a missing hour have to differ before the kiln itself can tell. */
const TELLING_C = 8;

/** Whether a missing hour passed in the kiln, by what the temperature did around it; null where that does not tell. */
export function missingHour(
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

export const askMissingHour = (row: CsvRow): LogQuestion => ({
  kind: "question",
  about: "missingHour",
  question: `An hour is missing before line ${row.line}. Was the clock put forward?`,
  choices: [
    { option: { missingHour: "clock-change" }, means: "yes, for summer time; none passed in the kiln" },
    { option: { missingHour: "no-readings" }, means: "no; the hour passed without readings" },
  ],
});
