import type { Curve } from "./curve.ts";

/**
 * How an ideal kiln cools when its power goes off: towards the room, the gap shrinking by the factor e each time
 * constant. Four hours is a small brick kiln: 300 °C/h at cone 6, 95 °C after eleven hours (common practice, no source).
 * Heat work cares for the first hundred degrees only.
 */
export interface Cooling {
  readonly roomC: number;
  readonly timeConstantHours: number;
}
export const NATURAL_COOLING: Cooling = { roomC: 20, timeConstantHours: 4 };

/** Cooling over this range is all that heat work can feel. */
const FELT_C = 400;
const STEP_C = 5;

/** Corners [minutes, °C] of natural cooling, from a moment at a temperature down to another, the first left out. */
export function coolingCorners(
  cooling: Cooling,
  fromMin: number,
  fromC: number,
  toC: number,
): (readonly [number, number])[] {
  const { roomC, timeConstantHours } = cooling;
  const lowest = Math.max(toC, roomC + 1);
  const steps = Math.ceil((fromC - lowest) / STEP_C);
  const corners: (readonly [number, number])[] = [];
  for (let step = 1; step <= steps; step++) {
    const celsius = Math.max(lowest, fromC - step * STEP_C);
    const hours = timeConstantHours * Math.log((fromC - roomC) / (celsius - roomC));
    corners.push([fromMin + hours * 60, celsius]);
  }
  return corners;
}

/** The curve with a hold at its last temperature and as much natural cooling as a cone can feel. */
export function withHoldAndCooling(curve: Curve, holdMin: number, cooling: Cooling): Curve {
  const last = curve.minutes.length - 1;
  const endMin = (curve.minutes[last] as number) + holdMin;
  const endC = curve.tempC[last] as number;
  const corners = [[endMin, endC] as const, ...coolingCorners(cooling, endMin, endC, endC - FELT_C)];
  return {
    minutes: Float64Array.from([...curve.minutes, ...corners.map((corner) => corner[0])]),
    tempC: Float64Array.from([...curve.tempC, ...corners.map((corner) => corner[1])]),
  };
}
