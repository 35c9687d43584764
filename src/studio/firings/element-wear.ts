import { RENEW_BELOW } from "../../firing/elements/element-condition.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { UpkeepRecord } from "../records/upkeep-record.ts";

/** One measuring of the elements. */
export interface WearPoint {
  readonly at: string;
  /** Firings since the elements were new, or since they were first measured. */
  readonly firings: number;
  /** The even rise of resistance that loses as much power: 0 is new. */
  readonly rise: number;
  readonly ohms: readonly number[];
}

/** How a set of elements wears. */
export interface ElementWear {
  readonly points: readonly WearPoint[];
  /** True where the first measuring was of a new set; else wear is counted from a set already used. */
  readonly fromNew: boolean;
  /** The power that is left, by the trend, as a share of the first measuring's; null where nothing was measured. */
  readonly powerLeft: number | null;
  /** Rise of resistance a firing, by a straight line; null before two measurings with firings between. */
  readonly risePerFiring: number | null;
  readonly limit: { readonly rise: number; readonly reason: string; readonly source: string };
  /** Until the line reaches the limit; least and most by two standard errors where three measurings tell them. */
  readonly remainingFirings: { readonly expected: number; readonly least: number; readonly most: number | null } | null;
  /** What to know, in sentences. */
  readonly notes: readonly string[];
}

/** Measured so soon after they were put in, elements count as new. */
const NEW_WITHIN_FIRINGS = 2;

/**
 * How the elements wear, from their resistances: power at a fixed voltage goes with the sum of 1/R, so the rise is what
 * even wear would lose as much. A straight line through the measurings since they were changed, carried on to the limit.
 *
 * @param book the kiln's upkeep, the oldest first
 * @param fired its firings that have started
 */
export function elementWear(
  book: readonly UpkeepRecord[],
  fired: readonly FiringRecord[],
  limitShare?: number,
): ElementWear {
  const changedAt = book.findLast(({ what }) => what === "elements changed")?.at ?? "";
  const measured = book.filter(({ what, at }) => what === "element resistance" && at >= changedAt);
  const starts = fired.map(({ startedAt }) => startedAt ?? "").sort();
  const firingsUntil = (at: string): number => starts.filter((start) => start > changedAt && start <= at).length;
  const [first] = measured;
  const notes: string[] = [];
  const points = measured.flatMap(({ at, ohms = [] }): WearPoint[] => {
    const rise = riseOf(first?.ohms ?? [], ohms);
    return rise === null ? [] : [{ at, firings: firingsUntil(at), rise, ohms }];
  });
  if (points.length < measured.length) {
    notes.push("Measurings of another number of circuits are left out: measure them all, always in one order.");
  }
  const fromNew = changedAt !== "" && (points[0]?.firings ?? Number.POSITIVE_INFINITY) <= NEW_WITHIN_FIRINGS;
  if (points.length > 0 && !fromNew)
    notes.push("Counted from the first measuring: how worn the set was then is not known.");
  const limit = limitOf(limitShare);
  const line = straightLine(points);
  const now = firingsUntil("9999");
  if (line === null) {
    if (points.length > 0) notes.push("One more measuring after some firings shows how fast they wear.");
    const last = points.at(-1);
    return {
      points,
      fromNew,
      powerLeft: last ? 1 / (1 + last.rise) : null,
      risePerFiring: null,
      limit,
      remainingFirings: null,
      notes,
    };
  }
  const rise = line.at(now);
  const left = (slope: number): number => Math.max(0, (limit.rise - rise) / slope);
  const { slope, slopeError } = line;
  if (slope <= 0) notes.push("Their resistance has not risen: nothing tells yet how long they last.");
  const spread = slopeError ?? 0;
  const remainingFirings =
    slope <= 0
      ? null
      : {
          expected: left(slope),
          least: left(slope + 2 * spread),
          most: slope - 2 * spread > 0 ? left(slope - 2 * spread) : null,
        };
  return { points, fromNew, powerLeft: 1 / (1 + rise), risePerFiring: slope, limit, remainingFirings, notes };
}

function limitOf(limitShare: number | undefined): ElementWear["limit"] {
  if (limitShare === undefined) {
    return {
      rise: 1 / RENEW_BELOW - 1,
      reason: "Elements are usually renewed when a tenth of the power is gone.",
      source: "common practice, no source",
    };
  }
  return {
    rise: limitShare,
    reason: `Past a rise of ${Math.round(100 * limitShare)} % this kiln no longer reaches the cone with this load.`,
    source: "reckoned by Wareboard’s thermal model (wareboard: stillClimbs)",
  };
}

/** The even rise of resistance that loses as much power as these circuits lost; null where they cannot be compared. */
function riseOf(before: readonly number[], after: readonly number[]): number | null {
  if (before.length !== after.length || before.length === 0) return null;
  const conductance = (ohms: readonly number[]): number => ohms.reduce((sum, each) => sum + 1 / each, 0);
  return conductance(before) / conductance(after) - 1;
}

/** Least squares through rise over firings; its slope's standard error from three points on. */
function straightLine(points: readonly WearPoint[]) {
  const count = points.length;
  const meanX = points.reduce((sum, { firings }) => sum + firings, 0) / count;
  const meanY = points.reduce((sum, { rise }) => sum + rise, 0) / count;
  const spreadX = points.reduce((sum, { firings }) => sum + (firings - meanX) ** 2, 0);
  if (count < 2 || spreadX === 0) return null;
  const slope = points.reduce((sum, { firings, rise }) => sum + (firings - meanX) * (rise - meanY), 0) / spreadX;
  const at = (firings: number): number => meanY + slope * (firings - meanX);
  const residual = points.reduce((sum, { firings, rise }) => sum + (rise - at(firings)) ** 2, 0);
  const slopeError = count > 2 ? Math.sqrt(residual / (count - 2) / spreadX) : null;
  return { slope, slopeError, at };
}
