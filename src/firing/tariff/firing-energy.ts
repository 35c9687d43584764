import { BadInput } from "../../measures/bad-input.ts";

/** What a firing draws: watts over each step, told at the step's end. */
export interface FiringPower {
  /** Minutes since the start, rising. */
  readonly minutes: ArrayLike<number>;
  /** Mean power of the step that ends at each minute, W; the first is not used. */
  readonly watts: ArrayLike<number>;
}

/** A firing's energy, summed once so that any stretch of it is two look-ups. */
export interface FiringEnergy {
  /** Hours and kWh since the start, up to where the last power is drawn. */
  readonly hours: Float64Array;
  readonly kWh: Float64Array;
}

/** @throws BadInput where the arrays are not a firing's power */
export function firingEnergy({ minutes, watts }: FiringPower): FiringEnergy {
  const refuse = (path: string, found: string, expected: string): never => {
    throw new BadInput({ code: "not-power", path, found, expected });
  };
  if (minutes.length !== watts.length || minutes.length < 2) {
    refuse("watts", `${watts.length} powers for ${minutes.length} times`, "as many of each, at least two");
  }
  let last = minutes.length - 1;
  while (last > 1 && watts[last] === 0) last--;
  const hours = new Float64Array(last + 1);
  const kWh = new Float64Array(last + 1);
  for (let i = 1; i <= last; i++) {
    const step = ((minutes[i] as number) - (minutes[i - 1] as number)) / 60;
    const power = watts[i] as number;
    if (!(step >= 0)) refuse(`minutes[${i}]`, String(minutes[i]), "a time at or after the one before it");
    if (!(power >= 0 && power < Number.POSITIVE_INFINITY)) refuse(`watts[${i}]`, String(power), "watts, 0 or more");
    hours[i] = (hours[i - 1] as number) + step;
    kWh[i] = (kWh[i - 1] as number) + (power * step) / 1000;
  }
  return { hours, kWh };
}

/** kWh drawn from the start up to an hour of the firing; all of it after the end. */
export function energyUntil({ hours, kWh }: FiringEnergy, hour: number): number {
  const last = hours.length - 1;
  if (hour <= 0) return 0;
  if (hour >= (hours[last] as number)) return kWh[last] as number;
  let [low, high] = [0, last];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if ((hours[middle] as number) <= hour) low = middle;
    else high = middle;
  }
  const [from, to] = [hours[low] as number, hours[high] as number];
  const share = to > from ? (hour - from) / (to - from) : 1;
  return (kWh[low] as number) + share * ((kWh[high] as number) - (kWh[low] as number));
}
