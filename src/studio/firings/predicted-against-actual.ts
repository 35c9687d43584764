import { equivalentC } from "../../firing/heat-work/ladder-position.ts";
import { LID_LIFTS_C } from "../../firing/prediction/cool-steps.ts";
import type { ForetoldRecord } from "../records/firing-parts.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { ReadingSeries } from "../records/reading.ts";
import { controllingSeries, meteredKWh } from "./firing-evidence.ts";
import { levelHeats } from "./level-heat.ts";

const HOUR_MS = 3_600_000;

/** Foretold and measured of one thing; what is not known is null. */
export interface Against {
  readonly foretold: number | null;
  readonly actual: number | null;
  /** actual − foretold; null where one is missing. */
  readonly off: number | null;
}

/** One firing as it was foretold and as it went. */
export interface FiringAgainst {
  readonly firingId: string;
  readonly name: string;
  readonly kilnId: string;
  readonly startedAt: string;
  /** True where it was foretold from a calibration. */
  readonly calibrated: boolean;
  /** From the start to shut-off. */
  readonly hours: Against;
  readonly kWh: Against;
  readonly peakC: Against;
  /** Hours from shut-off until the probe is under 95 °C. */
  readonly coolHours: Against;
  /** Heat work of each level whose cones tell, as °C at 60 °C/h. */
  readonly shelves: readonly ({ readonly level: number } & Against)[];
  /** Root mean square of the shelves' `off`; null where no cone tells. */
  readonly shelfRmsC: number | null;
}

/**
 * Finished firings as they were foretold and as they went, the oldest first. What was foretold is what was known when
 * each was prepared, so that a row shows whether the foretelling got better.
 *
 * @param readings each firing's temperatures, by its id
 */
export function predictedAgainstActual(
  firings: readonly FiringRecord[],
  readings: ReadonlyMap<string, readonly ReadingSeries[]>,
): FiringAgainst[] {
  return firings
    .filter(({ state, startedAt }) => (state === "finished" || state === "cooling") && startedAt !== null)
    .sort((a, b) => ((a.startedAt ?? "") < (b.startedAt ?? "") ? -1 : 1))
    .map((firing) => againstOf(firing, readings.get(firing.id) ?? []));
}

function againstOf(firing: FiringRecord, readings: readonly ReadingSeries[]): FiringAgainst {
  const { foretold, startedAt, shutOffAt } = firing;
  const series = controllingSeries(readings);
  const shelves = levelHeats(firing).flatMap(({ level, heatC, from, bound }) => {
    const told = foretold?.levels.find((each) => each.level === level);
    return from === "cones" && bound === "about" && told
      ? [{ level, ...against(equivalentC(told.ladder), heatC) }]
      : [];
  });
  const squares = shelves.map(({ off }) => (off ?? 0) ** 2);
  const hours =
    startedAt === null || shutOffAt === undefined ? null : (Date.parse(shutOffAt) - Date.parse(startedAt)) / HOUR_MS;
  return {
    ...{ firingId: firing.id, name: firing.name, kilnId: firing.kilnId, startedAt: startedAt ?? "" },
    calibrated: foretold?.calibrationId !== undefined,
    hours: against(foretold?.hours ?? null, hours),
    kWh: against(foretold?.kWh ?? null, meteredKWh(firing)),
    peakC: against(foretold?.peakC ?? null, series && peakOf(series)),
    coolHours: against(foretold ? foretoldCoolHours(foretold) : null, coolHours(series, shutOffAt)),
    shelves,
    shelfRmsC: squares.length === 0 ? null : Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length),
  };
}

const against = (foretold: number | null, actual: number | null): Against => ({
  ...{ foretold, actual },
  off: foretold === null || actual === null ? null : actual - foretold,
});

const peakOf = ({ readings }: ReadingSeries): number =>
  readings.reduce((most, { tempC }) => Math.max(most, tempC), Number.NEGATIVE_INFINITY);

function coolHours(series: ReadingSeries | null, shutOffAt: string | undefined): number | null {
  if (series === null || shutOffAt === undefined) return null;
  const cool = series.readings.find(({ at, tempC }) => at > shutOffAt && tempC <= LID_LIFTS_C);
  return cool ? (Date.parse(cool.at) - Date.parse(shutOffAt)) / HOUR_MS : null;
}

/**
 * The same of the foretold curve, which is the probe's too: `foretold.coolHours` waits for the ware besides, of which
 * nobody reads the temperature.
 */
function foretoldCoolHours({ curve, hours }: ForetoldRecord): number | null {
  const after = curve.findIndex(([minute, tempC]) => minute > hours * 60 && tempC <= LID_LIFTS_C);
  const [cool, hot] = [curve[after], curve[after - 1]];
  if (!cool || !hot) return null;
  const share = hot[1] > cool[1] ? (hot[1] - LID_LIFTS_C) / (hot[1] - cool[1]) : 1;
  return (hot[0] + share * (cool[0] - hot[0])) / 60 - hours;
}

/** How far off a kiln's firings were foretold, root mean square: before it was calibrated, and since. */
export interface HowFarOff {
  readonly firings: number;
  readonly hoursPercent: number | null;
  readonly kWhPercent: number | null;
  readonly shelfC: number | null;
  readonly coolPercent: number | null;
}

/** @param rows of `predictedAgainstActual`, whichever are to be summed up */
export function howFarOff(rows: readonly FiringAgainst[]): HowFarOff {
  const rms = (values: readonly number[]): number | null =>
    values.length === 0 ? null : Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);
  const percents = (of: (row: FiringAgainst) => Against): number[] =>
    rows.flatMap((row) => {
      const { off, actual } = of(row);
      return off === null || !actual ? [] : [(100 * off) / actual];
    });
  return {
    firings: rows.length,
    hoursPercent: rms(percents(({ hours }) => hours)),
    kWhPercent: rms(percents(({ kWh }) => kWh)),
    shelfC: rms(rows.flatMap(({ shelves }) => shelves.flatMap(({ off }) => (off === null ? [] : [off])))),
    coolPercent: rms(percents(({ coolHours: cool }) => cool)),
  };
}
