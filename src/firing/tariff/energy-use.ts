import { BadInput } from "../../measures/bad-input.ts";

/** What a firing draws: the mean power up to each minute from the one before it; the first entry is unused (as `fire` gives it). */
export interface PowerCurve {
  readonly minutes: ArrayLike<number>;
  readonly watts: ArrayLike<number>;
}

/** A firing's energy since its start, straight between the power curve's minutes. */
export interface EnergyUse {
  readonly minutes: Float64Array;
  /** kWh used up to each of those minutes. */
  readonly kWh: Float64Array;
}

/**
 * Adds a power curve up.
 *
 * @throws BadInput where the two lists differ in length, are short, or time falls
 */
export function energyUse({ minutes, watts }: PowerCurve): EnergyUse {
  if (minutes.length !== watts.length || minutes.length < 2) {
    throw new BadInput({
      code: "lengths-differ",
      path: "watts",
      found: `${minutes.length} minutes and ${watts.length} powers`,
      expected: "as many powers as minutes, at least two",
    });
  }
  const use = { minutes: Float64Array.from(minutes), kWh: new Float64Array(minutes.length) };
  for (let i = 1; i < minutes.length; i++) {
    const span = (use.minutes[i] as number) - (use.minutes[i - 1] as number);
    if (!(span >= 0)) {
      throw new BadInput({
        code: "time-falls",
        path: `minutes[${i}]`,
        found: String(minutes[i]),
        expected: "a time at or after the one before it",
      });
    }
    use.kWh[i] = (use.kWh[i - 1] as number) + ((watts[i] as number) * span) / 60_000;
  }
  return use;
}

/** kWh used up to a minute. */
export function usedBy({ minutes, kWh }: EnergyUse, minute: number): number {
  if (minute <= (minutes[0] as number)) return 0;
  let low = 0;
  let high = minutes.length - 1;
  if (minute >= (minutes[high] as number)) return kWh[high] as number;
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if ((minutes[middle] as number) <= minute) low = middle;
    else high = middle;
  }
  const share = (minute - (minutes[low] as number)) / ((minutes[high] as number) - (minutes[low] as number));
  return (kWh[low] as number) + share * ((kWh[high] as number) - (kWh[low] as number));
}

/** The minute after which nothing is drawn any more. */
export function lastUse({ minutes, kWh }: EnergyUse): number {
  let last = minutes.length - 1;
  while (last > 0 && (kWh[last - 1] as number) >= (kWh[kWh.length - 1] as number)) last--;
  return minutes[last] as number;
}
