/** How backups thin out with age: within each age, the newest of each span is kept. */
export interface KeptSpan {
  /** For backups up to this old. */
  readonly untilDays: number;
  /** One for each stretch of this many days. */
  readonly spanDays: number;
}

const DAY_MS = 24 * 60 * 60 * 1000;

/** Younger than this, every backup is kept. */
export const ALL_KEPT_DAYS = 2;

// Each span is a whole number of the one before, so that a backup kept for its month was kept for its week and day:
// thinning every night ends where thinning once would.
export const KEPT_SPANS: readonly KeptSpan[] = [
  { untilDays: 14, spanDays: 1 },
  { untilDays: 84, spanDays: 7 },
  { untilDays: 2 * 364, spanDays: 28 },
  { untilDays: Number.POSITIVE_INFINITY, spanDays: 364 },
];

/**
 * Which backups to keep: all of the last two days, then one a day for two weeks, one a week for twelve, one for each
 * four weeks for two years, one a year after that. The newest is always among them.
 *
 * @param times when each backup was made, ISO 8601 in UTC, in any order; one from the future is kept
 * @param now the moment, ISO 8601 in UTC
 * @returns the times to keep, newest first
 */
export function backupsToKeep(times: readonly string[], now: string): string[] {
  const newestFirst = [...new Set(times)].sort().reverse();
  const taken = new Set<string>();
  return newestFirst.filter((time, i) => {
    const span = spanOf(time, now);
    if (span === null || i === 0) return true;
    if (taken.has(span)) return false;
    taken.add(span);
    return true;
  });
}

/** The stretch of the calendar a backup stands for, or null where it stands for itself. */
function spanOf(time: string, now: string): string | null {
  const ageDays = (Date.parse(now) - Date.parse(time)) / DAY_MS;
  if (ageDays < ALL_KEPT_DAYS) return null;
  const { spanDays } = KEPT_SPANS.find(({ untilDays }) => ageDays < untilDays) as KeptSpan;
  return `${spanDays}: ${Math.floor(Date.parse(time) / DAY_MS / spanDays)}`;
}
