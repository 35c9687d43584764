import { CONES, type ConeName, coneAtLadder, conePlace, ladderOf } from "../cones/cone.ts";
import { CONE_TABLE, type ConeRow } from "../cones/cone-table.ts";
import { CONE_KINETICS } from "./cone-kinetics.ts";
import { GAS_CONSTANT } from "./gas-constant.ts";

/** By what share a cone's work grows for each °C at its end point at 60 °C/h: A·exp(−E/RT)·60 s. */
export const GROWTH_PER_C: readonly number[] = CONE_KINETICS.map((each, place) => {
  const kelvin = (CONE_TABLE[place] as ConeRow).at60C + 273.15 + each.fitErrorC[1];
  return Math.exp(each.lnAPerSecond - each.energyJPerMol / (GAS_CONSTANT * kelvin)) * 60;
});

/** How many °C more (or, below zero, less) than it needed a cone got: ln(work) over its growth per °C. */
export const degreesBeyond = (cone: ConeName, work: number): number =>
  Math.log(work) / (GROWTH_PER_C[conePlace(cone)] as number);

/**
 * A cone counts as down from this work on. The last thousandth is 0.03 °C, less than a log's own rounding; the table
 * has whole degrees.
 */
export const DOWN_AT = 0.999;

export interface LadderPosition {
  /** The hottest whole cone that is down, none hotter than one still standing; null below cone 022. */
  readonly coneDown: ConeName | null;
  /** The whole cone after it, or null above cone 14. */
  readonly next: ConeName | null;
  /** How far towards the next one, 0 to 1, in °C of heat work. */
  readonly towardNext: number;
  /** The same as one number: 022 = 0 … 6 = 27 … 14 = 35. Below cone 022 it runs down to −1. */
  readonly ladder: number;
  /** Cones that are down although a cooler one still stands: the order does not hold there. */
  readonly outOfOrder: readonly ConeName[];
}

/**
 * Where on the ladder of cones a firing stands. Between two neighbours, half cones counted, the place is the share of
 * the °C by which the lower one was overdone in those and the °C that the upper one still lacks. Order is kept: a
 * cone counts only when every cooler one is down too.
 *
 * @param works the work of every cone, in the order of `CONES`
 */
export function ladderPosition(works: readonly number[]): LadderPosition {
  const standing = works.findIndex((work) => work < DOWN_AT);
  const outOfOrder =
    standing < 0 ? [] : CONES.filter((_, place) => place > standing && (works[place] as number) >= DOWN_AT);
  const ladder = standing < 0 ? ladderOf(CONES.at(-1) as ConeName) : ladderBelow(standing, works);
  const whole = Math.floor(ladder);
  return {
    coneDown: coneAtLadder(whole),
    next: coneAtLadder(whole + 1),
    towardNext: coneAtLadder(whole + 1) === null ? 0 : ladder - whole,
    ladder,
    outOfOrder,
  };
}

function ladderBelow(standing: number, works: readonly number[]): number {
  const upper = CONES[standing] as ConeName;
  const lacking = -degreesBeyond(upper, works[standing] as number);
  if (standing === 0) {
    // Nothing is cooler than cone 022: the step below it is taken to be as wide as the step above it.
    const stepC = (CONE_TABLE[1] as ConeRow).at60C - (CONE_TABLE[0] as ConeRow).at60C;
    return -Math.min(1, lacking / stepC);
  }
  const lower = CONES[standing - 1] as ConeName;
  const over = Math.max(0, degreesBeyond(lower, works[standing - 1] as number));
  const share = over + lacking > 0 && Number.isFinite(lacking) ? over / (over + lacking) : 0;
  return ladderOf(lower) + share * (ladderOf(upper) - ladderOf(lower));
}

/**
 * A place on the ladder as the temperature at which a steady 60 °C/h brings the same work, °C: 27 is 1222 °C.
 * The difference of two firings' is their difference in heat work, in degrees.
 */
export function equivalentC(ladder: number): number {
  const rungs = CONE_TABLE.map((row) => ladderOf(row.cone));
  const above = rungs.findIndex((rung) => rung > ladder);
  const upper = above < 0 ? CONE_TABLE.length - 1 : Math.max(1, above);
  const [from, to] = [CONE_TABLE[upper - 1] as ConeRow, CONE_TABLE[upper] as ConeRow];
  const share = (ladder - ladderOf(from.cone)) / (ladderOf(to.cone) - ladderOf(from.cone));
  return from.at60C + share * (to.at60C - from.at60C);
}
