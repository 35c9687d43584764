import type { WatchedMoment } from "../../../studio/api/watch-contract.ts";
import { clockWords, timeWords } from "../../firings/words/clock-words.ts";

/** Spreads narrower than this are told as one moment, minutes. */
const NARROW_MIN = 4;
/** Spreads wider than this are rounded to a quarter of an hour: "between 14:00 and 16:30". */
const WIDE_MIN = 45;
const MINUTE_MS = 60_000;

const dayOf = (startAt: string, minute: number): string =>
  new Date(Date.parse(startAt) + minute * MINUTE_MS).toDateString();

/** A minute of the firing by the clock, with the day where it is not today's. */
function clock(startAt: string, minute: number, nowMin: number): string {
  return dayOf(startAt, minute) === dayOf(startAt, nowMin) ? timeWords(startAt, minute) : clockWords(startAt, minute);
}

/** A moment that is only foretold: "about 14:35", "between 14:20 and 14:50". What is over is not foretold. */
export function momentWords(moment: WatchedMoment, startAt: string, nowMin: number): string {
  const { atMin, toMin } = moment;
  const fromMin = Math.max(moment.fromMin, nowMin);
  if (toMin - fromMin < NARROW_MIN) return `about ${clock(startAt, Math.max(atMin, nowMin), nowMin)}`;
  const by = toMin - fromMin > WIDE_MIN ? 15 : 5;
  const [from, to] = outward(fromMin, toMin, by, startAt);
  const until = dayOf(startAt, from) === dayOf(startAt, to) ? timeWords(startAt, to) : clockWords(startAt, to);
  return `between ${clock(startAt, from, nowMin)} and ${until}`;
}

/** The spread to round times of the clock, made no narrower. */
function outward(fromMin: number, toMin: number, by: number, startAt: string): [number, number] {
  const start = Date.parse(startAt) / MINUTE_MS;
  const down = Math.floor((start + fromMin) / by) * by - start;
  const up = Math.ceil((start + toMin) / by) * by - start;
  return [down, up];
}
