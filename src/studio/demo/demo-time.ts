const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/** The demo's calendar: everything in it lies before or after the moment it is made. */
export interface DemoTime {
  /** The moment so long before now. */
  readonly ago: (days: number, minutes?: number) => string;
  /** The day so many days from now. */
  readonly day: (days: number) => string;
}

/** @param now the moment, ISO 8601 in UTC */
export function demoTime(now: string): DemoTime {
  const at = (ms: number): string => new Date(Date.parse(now) + ms).toISOString();
  return {
    ago: (days, minutes = 0) => at(-days * DAY_MS - minutes * MINUTE_MS),
    day: (days) => at(days * DAY_MS).slice(0, 10),
  };
}
