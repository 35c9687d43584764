import { BadInput, shown } from "../../measures/bad-input.ts";

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** What the clock on the wall shows at an instant. */
export interface WallTime {
  readonly year: number;
  /** 1 to 12, 1 to 31. */
  readonly month: number;
  readonly day: number;
  /** 0 is Monday. */
  readonly weekday: number;
  /** Milliseconds since midnight by the clock. */
  readonly msOfDay: number;
  /** The clock is this much ahead of UTC. */
  readonly offsetMs: number;
}

/** @throws BadInput where no such time zone is known */
export function checkTimeZone(timeZone: string, path: string): void {
  try {
    formatterOf(timeZone);
  } catch {
    throw new BadInput({
      code: "unknown-time-zone",
      path,
      found: shown(timeZone),
      expected: "an IANA time zone, such as Europe/Berlin or America/New_York",
    });
  }
}

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatterOf(timeZone: string): Intl.DateTimeFormat {
  const known = formatters.get(timeZone);
  if (known) return known;
  const made = new Intl.DateTimeFormat("en-US", {
    timeZone,
    calendar: "gregory",
    numberingSystem: "latn",
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  });
  formatters.set(timeZone, made);
  return made;
}

/** How far a zone's clock is ahead of UTC at an instant, by the IANA time zone database that the platform carries. */
export function offsetMs(timeZone: string, atMs: number): number {
  const part: Record<string, number> = {};
  for (const { type, value } of formatterOf(timeZone).formatToParts(atMs)) part[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
  return Date.UTC(year, month - 1, day, hour, minute, second) - Math.floor(atMs / 1000) * 1000;
}

/** What a zone's clock shows at an instant, in milliseconds since 1970 UTC. */
export function wallTime(timeZone: string, atMs: number): WallTime {
  const ahead = offsetMs(timeZone, atMs);
  const days = Math.floor((atMs + ahead) / DAY_MS);
  const date = new Date(days * DAY_MS);
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    // The first of January 1970 was a Thursday.
    weekday: (((days + 3) % 7) + 7) % 7,
    msOfDay: atMs + ahead - days * DAY_MS,
    offsetMs: ahead,
  };
}

/** The instants at which a zone's clock shows a date and time: one, none in the hour it skips, two in the hour it repeats. */
export function instantsShowing(timeZone: string, shownMs: number): number[] {
  const offsets = new Set([-DAY_MS, 0, DAY_MS].map((away) => offsetMs(timeZone, shownMs + away)));
  return [...offsets]
    .map((ahead) => ({ at: shownMs - ahead, ahead }))
    .filter(({ at, ahead }) => offsetMs(timeZone, at) === ahead)
    .map(({ at }) => at)
    .sort((a, b) => a - b);
}

/** The first instant in (fromMs, untilMs] at which the clock has been moved, or null. At most one move is looked for. */
export function clockMove(timeZone: string, fromMs: number, untilMs: number): number | null {
  const before = offsetMs(timeZone, fromMs);
  if (offsetMs(timeZone, untilMs) === before) return null;
  let [low, high] = [fromMs, untilMs];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (offsetMs(timeZone, middle) === before) low = middle;
    else high = middle;
  }
  return high;
}

/** "2026-10-25 02:30, UTC+02:00": an instant as a zone's clock shows it. */
export function wallText(timeZone: string, atMs: number): string {
  const { year, month, day, msOfDay, offsetMs: ahead } = wallTime(timeZone, atMs);
  const two = (value: number): string => String(value).padStart(2, "0");
  const minutes = Math.floor(msOfDay / MINUTE_MS);
  const away = Math.abs(ahead) / MINUTE_MS;
  const offset = `UTC${ahead < 0 ? "−" : "+"}${two(Math.floor(away / 60))}:${two(Math.round(away % 60))}`;
  return `${year}-${two(month)}-${two(day)} ${two(Math.floor(minutes / 60))}:${two(minutes % 60)}, ${offset}`;
}
