import { COOL_STEPS } from "../prediction/cool-steps.ts";
import type { SimulatedFiring } from "../thermal/fire.ts";

/** The coolest that a potter waits for, °C. */
export const COOLEST_C = Math.min(...COOL_STEPS.map((step) => step.tempC));

/** The hottest of probe and ware over time: what was, and what is to come. */
export interface Hottest {
  readonly minutes: readonly number[];
  readonly tempC: readonly number[];
}

/** A kiln's hottest so far and in a firing that goes on from there. @param shownC added to what is to come, by temperature */
export function hottestThrough(
  past: Hottest,
  firing: SimulatedFiring,
  nowMin: number,
  shownC: (tempC: number) => number,
): Hottest {
  const { minutes, probeC, levelC } = firing;
  const later = Array.from(minutes, (_, i) => {
    const hottest = levelC.reduce((most, level) => Math.max(most, level[i] as number), probeC[i] as number);
    return hottest + shownC(hottest);
  });
  return {
    minutes: [...past.minutes, ...Array.from(minutes, (minute) => nowMin + minute)],
    tempC: [...past.tempC, ...later],
  };
}

/** When it is under a temperature for good, once it is off; null where it is followed to no such end. */
export function coolAtMin({ minutes, tempC }: Hottest, offMin: number, underC: number): number | null {
  let i = tempC.length - 1;
  if ((tempC[i] as number) > underC) return null;
  while (i > 0 && (tempC[i - 1] as number) <= underC) i--;
  if (i === 0) return offMin;
  const [above, below] = [tempC[i - 1] as number, tempC[i] as number];
  const [from, to] = [minutes[i - 1] as number, minutes[i] as number];
  return Math.max(offMin, from + ((above - underC) / (above - below)) * (to - from));
}
