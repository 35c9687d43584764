const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

const formats = new Map<string, Intl.DateTimeFormat>();

function formatIn(timeZone: string): Intl.DateTimeFormat {
  let format = formats.get(timeZone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-GB", {
      timeZone,
      calendar: "gregory",
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
    formats.set(timeZone, format);
  }
  return format;
}

/**
 * By how many minutes the clock on the wall is ahead of universal time.
 *
 * @param timeZone of the IANA database
 * @param ms the moment, milliseconds since 1970 in universal time
 * @throws RangeError for a time zone that is none
 */
export function offsetMinutes(timeZone: string, ms: number): number {
  const parts: Record<string, number> = {};
  for (const { type, value } of formatIn(timeZone).formatToParts(ms)) parts[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = parts;
  const wall = Date.UTC(year, month - 1, day, hour, minute, second);
  return Math.round((wall - Math.floor(ms / 1000) * 1000) / MINUTE_MS);
}

/** A stretch of time over which the clock on the wall runs evenly. */
export interface EvenStretch {
  readonly fromMs: number;
  readonly toMs: number;
  readonly offsetMin: number;
}

/**
 * Cuts a span where the clocks are changed. No two changes lie within an hour of each other.
 *
 * @param fromMs,toMs milliseconds since 1970 in universal time
 */
export function evenStretches(timeZone: string, fromMs: number, toMs: number): EvenStretch[] {
  const stretches: EvenStretch[] = [];
  let start = fromMs;
  let offset = offsetMinutes(timeZone, fromMs);
  for (let at = fromMs; at < toMs; ) {
    const next = Math.min(toMs, at + HOUR_MS);
    const nextOffset = offsetMinutes(timeZone, next);
    if (nextOffset !== offset) {
      const change = changeBetween(timeZone, at, next, offset);
      stretches.push({ fromMs: start, toMs: change, offsetMin: offset });
      start = change;
      offset = nextOffset;
    }
    at = next;
  }
  if (toMs > start) stretches.push({ fromMs: start, toMs, offsetMin: offset });
  return stretches;
}

/** The first whole second at which the offset is no longer the given one. */
function changeBetween(timeZone: string, fromMs: number, toMs: number, offset: number): number {
  let [before, after] = [Math.floor(fromMs / 1000), Math.ceil(toMs / 1000)];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (offsetMinutes(timeZone, middle * 1000) === offset) before = middle;
    else after = middle;
  }
  return after * 1000;
}

/** Day, month and time on the clock on the wall. */
export interface WallTime {
  /** 0 is Monday. */
  readonly weekday: number;
  /** 1 is January. */
  readonly month: number;
  readonly minuteOfDay: number;
  /** Counts the days of the calendar; its zero means nothing. */
  readonly dayNumber: number;
}

/** What the clock on the wall shows at a moment. */
export function wallTime(ms: number, offsetMin: number): WallTime {
  const wall = ms + offsetMin * MINUTE_MS;
  const dayNumber = Math.floor(wall / (24 * HOUR_MS));
  return {
    dayNumber,
    // The first of January 1970 was a Thursday.
    weekday: (((dayNumber + 3) % 7) + 7) % 7,
    month: new Date(wall).getUTCMonth() + 1,
    minuteOfDay: (wall - dayNumber * 24 * HOUR_MS) / MINUTE_MS,
  };
}
