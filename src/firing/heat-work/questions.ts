import { BadInput } from "../../measures/bad-input.ts";
import { type ConeName, conePlace } from "../cones/cone.ts";
import { CONE_TABLE } from "../cones/cone-table.ts";
import { CONE_KINETICS, type ConeKinetics } from "./cone-kinetics.ts";
import { coneWork, prepareCurve } from "./cone-work.ts";
import { type Cooling, NATURAL_COOLING, withHoldAndCooling } from "./cooling.ts";
import { type Curve, checkCurve, curveThrough } from "./curve.ts";

/** The work of one cone over a curve, its last point the end: 1 is down. For all cones at once: `heatWork`. */
export function workOf(cone: ConeName, curve: Curve): number {
  checkCurve(curve);
  return coneWork(CONE_KINETICS[conePlace(cone)] as ConeKinetics, prepareCurve(curve)).work;
}

/**
 * Where a rising function passes a value, by halving.
 *
 * @returns the upper end of the last bracket, so that the value is reached there; null where it is not within low … high
 */
export function whereReached(
  rising: (at: number) => number,
  value: number,
  low: number,
  high: number,
  tolerance: number,
): number | null {
  if (rising(low) >= value) return low;
  if (rising(high) < value) return null;
  let [under, over] = [low, high];
  while (over - under > tolerance) {
    const middle = (under + over) / 2;
    if (rising(middle) >= value) over = middle;
    else under = middle;
  }
  return over;
}

/** Longer holds than this are no answer: they lie far outside the published data. */
const LONGEST_HOLD_MIN = 24 * 60;

/**
 * How long to hold where a climb ends so that a cone falls, natural cooling counted.
 *
 * @param climb the firing so far; its last temperature is held
 * @returns minutes, 0 where the cone falls without a hold, or null where a day is not enough
 */
export function holdToDrop(cone: ConeName, climb: Curve, cooling: Cooling = NATURAL_COOLING): number | null {
  return whereReached(
    (holdMin) => workOf(cone, withHoldAndCooling(climb, holdMin, cooling)),
    1,
    0,
    LONGEST_HOLD_MIN,
    0.01,
  );
}

export interface HoldChoice {
  readonly holdC: number;
  readonly holdMin: number;
}

/**
 * The holds that drop a cone after a steady climb: one for each of some temperatures, hottest and shortest first.
 *
 * @param cPerHour the climb's rate over its last 100 °C
 * @param stepC how far apart the temperatures are
 */
export function holdChoices(
  cone: ConeName,
  cPerHour: number,
  stepC = 5,
  count = 8,
  cooling: Cooling = NATURAL_COOLING,
): HoldChoice[] {
  const highest = peakToDrop(cone, cPerHour, 0, cooling);
  const choices: HoldChoice[] = [];
  for (let i = 0; i < count; i++) {
    const holdC = Math.ceil(highest / stepC) * stepC - i * stepC;
    const holdMin = holdToDrop(cone, climbTo(holdC, cPerHour), cooling);
    if (holdMin !== null) choices.push({ holdC, holdMin });
  }
  return choices;
}

/**
 * What to climb to at a steady rate so that a cone falls, the hold and natural cooling counted.
 *
 * @param cPerHour above zero; the published data reach from 15 to 150
 * @returns °C
 * @throws BadInput for a rate or hold that is none
 */
export function peakToDrop(cone: ConeName, cPerHour: number, holdMin = 0, cooling: Cooling = NATURAL_COOLING): number {
  if (!(cPerHour > 0 && cPerHour <= 2000)) {
    throw new BadInput({
      code: "out-of-range",
      path: "cPerHour",
      found: String(cPerHour),
      expected: "a rate of climb above 0 and at most 2000 °C/h",
    });
  }
  if (!(holdMin >= 0)) {
    throw new BadInput({
      code: "out-of-range",
      path: "holdMin",
      found: String(holdMin),
      expected: "minutes, 0 or more",
    });
  }
  const near = (CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number]).at60C;
  const work = (peakC: number): number => workOf(cone, withHoldAndCooling(climbTo(peakC, cPerHour), holdMin, cooling));
  return whereReached(work, 1, near - 350, near + 250, 0.001) as number;
}

/**
 * What a hold is worth, in degrees: by how much the peak may be lower for it, the same cone falling. It depends on
 * cone and rate; a hold is no fixed share of a cone.
 */
export function degreesOfHold(
  cone: ConeName,
  cPerHour: number,
  holdMin: number,
  cooling: Cooling = NATURAL_COOLING,
): number {
  return peakToDrop(cone, cPerHour, 0, cooling) - peakToDrop(cone, cPerHour, holdMin, cooling);
}

const climbTo = (topC: number, cPerHour: number): Curve =>
  curveThrough([
    [0, 20],
    [((topC - 20) / cPerHour) * 60, topC],
  ]);
