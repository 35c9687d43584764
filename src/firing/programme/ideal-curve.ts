import { type Cooling, NATURAL_COOLING } from "../heat-work/cooling.ts";
import { type Curve, curveThrough } from "../heat-work/curve.ts";
import type { Programme } from "./programme.ts";

/** A kiln that follows any climb, and cools no faster than its bricks let it. */
export interface IdealKiln {
  readonly startC: number;
  /** What "as fast as the kiln can" is when heating, °C/h. */
  readonly fastestCPerHour: number;
  readonly cooling: Cooling;
  /** The curve goes on until it is this cool, °C. */
  readonly untilC: number;
}

/** 300 °C/h: a small kiln at full power, half full (common practice, no source). */
export const IDEAL_KILN: IdealKiln = { startC: 20, fastestCPerHour: 300, cooling: NATURAL_COOLING, untilC: 50 };

const STEP_C = 5;

/** The corners of a programme in an ideal kiln, and the minute at which each segment ends, hold included. */
export interface ProgrammeTimes {
  readonly curve: Curve;
  readonly segmentEndMin: readonly number[];
}

/** What an ideal kiln makes of a programme: every climb as written, cooling no faster than natural. */
export function programmeTimes(programme: Pick<Programme, "segments">, kiln: IdealKiln = IDEAL_KILN): ProgrammeTimes {
  const corners: [number, number][] = [[0, kiln.startC]];
  let [minute, celsius] = [0, kiln.startC];
  const goTo = (targetC: number, cPerHour: number | null): void => {
    if (targetC >= celsius) {
      minute += ((targetC - celsius) / (cPerHour ?? kiln.fastestCPerHour)) * 60;
      celsius = targetC;
      corners.push([minute, celsius]);
      return;
    }
    const lowest = Math.max(targetC, kiln.cooling.roomC + 1);
    while (celsius > lowest) {
      const next = Math.max(lowest, celsius - STEP_C);
      const natural = ((celsius + next) / 2 - kiln.cooling.roomC) / kiln.cooling.timeConstantHours;
      minute += ((celsius - next) / Math.min(natural, cPerHour ?? Number.POSITIVE_INFINITY)) * 60;
      celsius = next;
      corners.push([minute, celsius]);
    }
  };
  const segmentEndMin = programme.segments.map(({ rateCPerHour, targetC, holdMin }) => {
    goTo(targetC, rateCPerHour);
    if (holdMin > 0) {
      minute += holdMin;
      corners.push([minute, celsius]);
    }
    return minute;
  });
  if (celsius > kiln.untilC) goTo(kiln.untilC, null);
  return { curve: curveThrough(corners), segmentEndMin };
}

/** The curve an ideal kiln makes of a programme, cooled to 50 °C. */
export const programmeCurve = (programme: Pick<Programme, "segments">, kiln: IdealKiln = IDEAL_KILN): Curve =>
  programmeTimes(programme, kiln).curve;

export interface ProgrammeHours {
  /** Until the hottest segment ends, its hold included. */
  readonly heating: number;
  /** Until the last segment ends: cooling under control included. */
  readonly programmed: number;
  /** Until it is cool enough to unload. */
  readonly untilCool: number;
}

/** How long a programme takes in an ideal kiln, hours. */
export function programmeHours(programme: Pick<Programme, "segments">, kiln: IdealKiln = IDEAL_KILN): ProgrammeHours {
  const { curve, segmentEndMin } = programmeTimes(programme, kiln);
  return {
    heating: (segmentEndMin[peakSegment(programme)] as number) / 60,
    programmed: (segmentEndMin.at(-1) as number) / 60,
    untilCool: (curve.minutes.at(-1) as number) / 60,
  };
}

/** The place of the last segment that goes to a programme's highest target. */
export function peakSegment({ segments }: Pick<Programme, "segments">): number {
  let peak = 0;
  segments.forEach((segment, i) => {
    if (segment.targetC >= (segments[peak]?.targetC ?? 0)) peak = i;
  });
  return peak;
}
