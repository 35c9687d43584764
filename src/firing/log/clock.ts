export type DateOrder = "day-first" | "month-first";

/** Minutes on the instrument's clock, counted from 1970 as if it ran on universal time. */
export interface ClockReading {
  readonly minutes: number;
  /** True where the text says how far from universal time it is: such a clock does not jump. */
  readonly zoned: boolean;
}

const TIME = String.raw`(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*(?:([ap])\.?m\.?)?\s*(Z|[+-]\d{2}:?\d{2})?`;
const YEAR_FIRST = new RegExp(String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T,\s]+${TIME})?$`, "i");
const YEAR_LAST = new RegExp(
  String.raw`^(\d{1,2})([-/. ])(\d{1,2}|[a-z]{3,9})\.?[-/. ](\d{4}|\d{2})(?:[T,\s]+${TIME})?$`,
  "i",
);
const MONTH_NAMED = new RegExp(String.raw`^([a-z]{3,9})\.?\s+(\d{1,2}),?\s+(\d{4})(?:[T,\s]+${TIME})?$`, "i");
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** The two numbers of a date whose order is open, such as 3/4/2026; null for every other spelling. */
export function openDate(text: string): { readonly first: number; readonly second: number } | null {
  const match = YEAR_LAST.exec(text);
  if (!match || match[2] === "." || !/^\d+$/.test(match[3] as string)) return null;
  return { first: Number(match[1]), second: Number(match[3]) };
}

/**
 * Reads a date and time: ISO 8601, day or month first, month by name, 24 or 12 hours. Points between the numbers of a
 * date are day first, as wherever dates are so written.
 *
 * @returns null for a text that is no date, or one that the calendar does not have
 */
export function readClock(text: string, order: DateOrder): ClockReading | null {
  const iso = YEAR_FIRST.exec(text);
  if (iso) return reading(Number(iso[1]), Number(iso[2]), Number(iso[3]), iso.slice(4));
  const last = YEAR_LAST.exec(text);
  if (last) {
    const named = monthNamed(last[3] as string);
    const dayFirst = named !== null || last[2] === "." || order === "day-first";
    const [day, month] = dayFirst ? [Number(last[1]), named ?? Number(last[3])] : [Number(last[3]), Number(last[1])];
    const year = Number(last[4]);
    return reading(year < 100 ? 2000 + year : year, month, day, last.slice(5));
  }
  const month = MONTH_NAMED.exec(text);
  if (month) return reading(Number(month[3]), monthNamed(month[1] as string) ?? 0, Number(month[2]), month.slice(4));
  return null;
}

function monthNamed(text: string): number | null {
  const place = MONTHS.indexOf(text.slice(0, 3).toLowerCase());
  return place < 0 || /\d/.test(text) ? null : place + 1;
}

function reading(year: number, month: number, day: number, time: readonly (string | undefined)[]): ClockReading | null {
  const lastDay = new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= lastDay)) return null;
  const ofDay = time[0] === undefined ? 0 : minutesOfDay(time);
  if (ofDay === null) return null;
  const zone = time[4];
  return { minutes: Date.UTC(year, month - 1, day) / 60_000 + ofDay - offsetMin(zone), zoned: zone !== undefined };
}

function minutesOfDay(time: readonly (string | undefined)[]): number | null {
  const half = time[3]?.toLowerCase();
  let hour = Number(time[0]);
  if (half ? hour < 1 || hour > 12 : hour > 24) return null;
  if (half) hour = (hour % 12) + (half === "p" ? 12 : 0);
  return hour * 60 + Number(time[1]) + Number((time[2] ?? "0").replace(",", ".")) / 60;
}

function offsetMin(zone: string | undefined): number {
  if (zone === undefined || zone.toUpperCase() === "Z") return 0;
  const sign = zone.startsWith("-") ? -1 : 1;
  return sign * (Number(zone.slice(1, 3)) * 60 + Number(zone.slice(-2)));
}

const TIME_OF_DAY = /^(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*([ap])\.?m\.?$/i;
const COLONS = /^(?:(\d+)[.\s]+)?(\d{1,4}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?$/;
const SPELLED = /^(?:(\d+)\s*d[a-z]*)?\s*(?:(\d+)\s*h[a-z]*)?\s*(?:(\d+)\s*m[a-z]*)?\s*(?:(\d+)\s*s[a-z]*)?$/i;

/**
 * Reads a time without a date: 14:05:30, 2:05 pm, 1 d 02:30:00, 2h 05m. Two numbers are hours and minutes, or
 * minutes and seconds where it is said so.
 *
 * @returns minutes, or null for a text that is none
 */
export function readTimeOnly(text: string, twoNumbers: "h:mm" | "m:ss" = "h:mm"): number | null {
  const half = TIME_OF_DAY.exec(text);
  if (half) return minutesOfDay(half.slice(1));
  const colons = COLONS.exec(text);
  if (colons) {
    const [days, first, second, third] = [colons[1] ?? 0, colons[2], colons[3], colons[4]?.replace(",", ".")].map(
      Number,
    ) as [number, number, number, number];
    if (second > 59) return null;
    if (colons[4] === undefined && twoNumbers === "m:ss") return first + second / 60;
    return days * 1440 + first * 60 + second + (colons[4] === undefined ? 0 : third / 60);
  }
  const spelled = /\d\s*[dhms]/i.test(text) ? SPELLED.exec(text) : null;
  if (!spelled) return null;
  const [days, hours, minutes, seconds] = spelled.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
  ];
  return days * 1440 + hours * 60 + minutes + seconds / 60;
}

/** A clock's minutes as ISO 8601, to the second; the zone is left out, for it was the instrument's own. */
export const clockText = (minutes: number): string =>
  new Date(Math.round(minutes * 60) * 1000).toISOString().slice(0, 19);
