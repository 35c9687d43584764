import { COOL_STEPS } from "../prediction/predict.ts";
import type { SimulatedFiring } from "../thermal/fire.ts";

/** The coolest that a potter waits for, °C. */
export const COOLEST_C = Math.min(...COOL_STEPS.map((step) => step.tempC));

/** Minutes of a simulated firing until probe and ware are under a temperature for good; null where it ends before. */
export function coolAtMin({ minutes, probeC, levelC, shutOffMin }: SimulatedFiring, underC: number): number | null {
  const hottest = (i: number): number =>
    levelC.reduce((most, level) => Math.max(most, level[i] as number), probeC[i] as number);
  const end = minutes.length - 1;
  if (hottest(end) > underC) return null;
  let i = end;
  while (i > 0 && hottest(i - 1) <= underC) i--;
  if (i === 0) return shutOffMin;
  const [above, below] = [hottest(i - 1), hottest(i)];
  const [from, to] = [minutes[i - 1] as number, minutes[i] as number];
  return Math.max(shutOffMin, from + ((above - underC) / (above - below)) * (to - from));
}
