import type { ShownReadings, ShownSeries } from "../../studio/api/readings-contract.ts";
import type { ReadingSeries } from "../../studio/records/reading.ts";
import { ROLL_UP_PERIODS, type RollUpPeriod, type RollUpSeries } from "../../studio/records/roll-up.ts";
import type { ReadingSpan, StudioRecords } from "../../studio/records/store.ts";

/** What is asked to be shown. */
export interface ReadingWish {
  /** The finest that fits where left out. */
  readonly by?: "raw" | RollUpPeriod | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  /** How many of each probe at most. */
  readonly most: number;
}

const FINEST_FIRST = ["raw", ...ROLL_UP_PERIODS] as const;

/** A firing's readings as they are asked for, or gathered as coarsely as it takes for all of the span to be there. */
export async function shownReadings(
  { readings }: StudioRecords,
  firingId: string,
  { by, from, to, most }: ReadingWish,
): Promise<ShownReadings> {
  // One more than fits tells whether that was all.
  const span: ReadingSpan = { from, to, most: most + 1 };
  for (const step of by === undefined ? FINEST_FIRST : [by]) {
    const series =
      step === "raw"
        ? (await readings.within(firingId, span)).map(rawSeries)
        : (await readings.rolledUp(firingId, step, span)).map(rolledUpSeries);
    if (by === undefined && step !== "hour" && series.some(({ at }) => at.length > most)) continue;
    return cutOff(step, series, most);
  }
  throw new Error("Some step is always taken.");
}

/** Cuts every probe's list at the earliest moment at which one of them would be too long. */
function cutOff(by: ShownReadings["by"], series: readonly ShownSeries[], most: number): ShownReadings {
  const more = series.flatMap(({ at }) => at[most] ?? []).sort()[0] ?? null;
  if (more === null) return { by, series, more };
  const within = ({ at }: ShownSeries): number => at.filter((moment) => moment < more).length;
  return { by, series: series.map((each) => shortened(each, within(each))), more };
}

function shortened(series: ShownSeries, length: number): ShownSeries {
  const { probe, at, tempC, rolledUp } = series;
  const lists = { probe, at: at.slice(0, length), tempC: tempC.slice(0, length) };
  if (rolledUp === undefined) return lists;
  const short = Object.entries(rolledUp).map(([name, list]) => [name, list.slice(0, length)] as const);
  return { ...lists, rolledUp: Object.fromEntries(short) as unknown as NonNullable<ShownSeries["rolledUp"]> };
}

const rawSeries = ({ probe, readings }: ReadingSeries): ShownSeries => ({
  probe,
  at: readings.map(({ at }) => at),
  tempC: readings.map(({ tempC }) => tempC),
});

const rolledUpSeries = ({ probe, rollUps }: RollUpSeries): ShownSeries => ({
  probe,
  at: rollUps.map(({ at }) => at),
  tempC: rollUps.map(({ meanC }) => meanC),
  rolledUp: {
    count: rollUps.map(({ count }) => count),
    leastC: rollUps.map(({ leastC }) => leastC),
    mostC: rollUps.map(({ mostC }) => mostC),
    firstC: rollUps.map(({ firstC }) => firstC),
    lastC: rollUps.map(({ lastC }) => lastC),
  },
});
