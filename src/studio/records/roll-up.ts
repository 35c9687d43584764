import type { Reading } from "./reading.ts";

/** What readings are gathered by. */
export const ROLL_UP_PERIODS = ["minute", "hour"] as const;
export type RollUpPeriod = (typeof ROLL_UP_PERIODS)[number];

/** One probe's readings of one minute or hour, gathered. Temperatures in °C. */
export interface RollUp {
  /** When the minute or hour begins. */
  readonly at: string;
  readonly count: number;
  readonly leastC: number;
  readonly mostC: number;
  readonly meanC: number;
  readonly firstC: number;
  readonly lastC: number;
}

/** One probe's minutes or hours of one firing, in order of time. Those without a reading are not there. */
export interface RollUpSeries {
  readonly firingId: string;
  readonly probe: string;
  readonly rollUps: readonly RollUp[];
}

/** A roll-up as it is kept: it can be added to without looking at its readings again. */
export interface KeptRollUp extends Omit<RollUp, "meanC"> {
  readonly sumC: number;
  readonly firstAt: string;
  readonly lastAt: string;
}

const STARTS: Readonly<Record<RollUpPeriod, { readonly kept: number; readonly rest: string }>> = {
  minute: { kept: "2026-11-25T09:47".length, rest: ":00.000Z" },
  hour: { kept: "2026-11-25T09".length, rest: ":00:00.000Z" },
};

/** When the minute or hour of a moment begins. */
export const startOf = (period: RollUpPeriod, at: string): string =>
  at.slice(0, STARTS[period].kept) + STARTS[period].rest;

/** Gathers readings, each moment once and in any order, by minute or hour. */
export function rollUp(period: RollUpPeriod, readings: readonly Reading[]): KeptRollUp[] {
  const gathered = new Map<string, { -readonly [Field in keyof KeptRollUp]: KeptRollUp[Field] }>();
  for (const { at, tempC } of readings) {
    const start = startOf(period, at);
    const found = gathered.get(start);
    if (found === undefined) {
      const [leastC, mostC, sumC, firstC, lastC] = [tempC, tempC, tempC, tempC, tempC];
      gathered.set(start, { at: start, count: 1, leastC, mostC, sumC, firstC, lastC, firstAt: at, lastAt: at });
      continue;
    }
    found.count++;
    found.sumC += tempC;
    if (tempC < found.leastC) found.leastC = tempC;
    if (tempC > found.mostC) found.mostC = tempC;
    if (at < found.firstAt) [found.firstAt, found.firstC] = [at, tempC];
    if (at > found.lastAt) [found.lastAt, found.lastC] = [at, tempC];
  }
  return [...gathered.values()].sort((a, b) => (a.at < b.at ? -1 : 1));
}

/** A roll-up as it is shown. */
export const shownRollUp = ({ at, count, leastC, mostC, sumC, firstC, lastC }: KeptRollUp): RollUp => ({
  ...{ at, count, leastC, mostC, firstC, lastC },
  meanC: sumC / count,
});
