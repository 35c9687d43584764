import { CONES, isHalfCone } from "../../../firing/cones/cone.ts";
import { coneC } from "./chart-series.ts";

/** A cone's name on the second scale, at its place in °C. */
export interface ConeTick {
  readonly cone: string;
  readonly tempC: number;
}

/**
 * Which cones the second scale names: from the hottest that shows downwards, as many as there is room for. Potters read
 * the top of the scale, so that is where none is left out for want of room below.
 *
 * @param leastApartC how far two names must be apart, °C
 */
export function coneTicks(lowestC: number, highestC: number, leastApartC: number): ConeTick[] {
  const ticks: ConeTick[] = [];
  let freeBelow = Number.POSITIVE_INFINITY;
  for (const cone of [...CONES].reverse()) {
    if (isHalfCone(cone)) continue;
    const tempC = coneC(cone);
    if (tempC > highestC || tempC < lowestC || tempC > freeBelow) continue;
    ticks.push({ cone, tempC });
    freeBelow = tempC - leastApartC;
  }
  return ticks.reverse();
}

/** Steps of the temperature scale in her own degrees, so that no more than so many lines stand. */
export function degreeTicks(lowest: number, highest: number, most: number): number[] {
  const step = [50, 100, 200, 250, 500, 1000].find((each) => (highest - lowest) / each <= most) ?? 1000;
  const ticks: number[] = [];
  for (let at = Math.ceil(lowest / step) * step; at <= highest; at += step) ticks.push(at);
  return ticks;
}

/** Steps of the hours, in minutes, so that no more than so many stand. */
export function hourTicks(fromMin: number, toMin: number, most: number): number[] {
  const steps = [15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880];
  const step = steps.find((each) => (toMin - fromMin) / each <= most) ?? 10080;
  const ticks: number[] = [];
  for (let at = Math.ceil(fromMin / step) * step; at <= toMin + 1e-9; at += step) ticks.push(at);
  return ticks;
}
