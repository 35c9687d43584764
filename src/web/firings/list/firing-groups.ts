import type { FiringRecord } from "../../../studio/records/firing-record.ts";

/** Firings of one month that are over. */
export interface FiringMonth {
  /** "2026-11" on this device's calendar. */
  readonly month: string;
  readonly firings: readonly FiringRecord[];
  /** Of those whose meter was read or that were foretold; null where none was. */
  readonly kWh: number | null;
}

export interface FiringGroups {
  /** Fires or cools now; what fires first. */
  readonly underWay: readonly FiringRecord[];
  /** The next to be switched on first; those without a time after them, the newest first. */
  readonly planned: readonly FiringRecord[];
  /** The latest first. */
  readonly past: readonly FiringMonth[];
}

/**
 * Firings as she looks for them.
 *
 * @param monthOf the month a moment lies in, on this device's calendar
 */
export function firingGroups(firings: readonly FiringRecord[], monthOf: (moment: string) => string): FiringGroups {
  const underWay = firings
    .filter(({ state }) => state === "firing" || state === "cooling")
    .sort((a, b) => Number(a.state === "cooling") - Number(b.state === "cooling") || later(a.startedAt, b.startedAt));
  const planned = firings.filter(({ state }) => state === "planned").sort(soonestFirst);
  const over = firings
    .filter(({ state }) => state === "finished" || state === "broken off")
    .sort((a, b) => later(a.startedAt, b.startedAt));
  const months = new Map<string, FiringRecord[]>();
  for (const firing of over) {
    const month = monthOf(firing.startedAt ?? firing.createdAt);
    months.set(month, [...(months.get(month) ?? []), firing]);
  }
  const past = [...months].map(([month, of]) => ({ month, firings: of, kWh: sumOf(of.map(measuredKWh)) }));
  return { underWay, planned, past };
}

const later = (a: string | null, b: string | null): number => (b ?? "").localeCompare(a ?? "");

function soonestFirst(a: FiringRecord, b: FiringRecord): number {
  const [first, second] = [a.plannedStartAt ?? "9", b.plannedStartAt ?? "9"];
  return first.localeCompare(second) || b.createdAt.localeCompare(a.createdAt);
}

function sumOf(all: readonly (number | null)[]): number | null {
  const known = all.filter((each) => each !== null);
  return known.length === 0 ? null : known.reduce((sum, each) => sum + each, 0);
}

/** What the meter says it drew; null where it was not read twice. */
export function measuredKWh({ meterReadings }: Pick<FiringRecord, "meterReadings">): number | null {
  const [first, last] = [meterReadings[0], meterReadings.at(-1)];
  return meterReadings.length < 2 || !first || !last ? null : last.kWh - first.kWh;
}

/** How its pieces came out. */
export interface OutcomeCounts {
  readonly good: number;
  readonly second: number;
  readonly lost: number;
}

/** Counts what was judged; null where nothing was yet. */
export function outcomeCounts({ outcomes = [] }: Pick<FiringRecord, "outcomes">): OutcomeCounts | null {
  if (outcomes.length === 0) return null;
  const of = (grade: string): number => outcomes.filter((each) => each.grade === grade).length;
  return { good: of("good"), second: of("second"), lost: of("lost") };
}

/** "14 good, 1 second, 2 lost": what there is none of is left out. */
export function outcomeWords({ good, second, lost }: OutcomeCounts): string {
  const parts = [
    good > 0 ? `${good} good` : "",
    second > 0 ? `${second} second${second === 1 ? "" : "s"}` : "",
    lost > 0 ? `${lost} lost` : "",
  ];
  return parts.filter(Boolean).join(", ");
}
