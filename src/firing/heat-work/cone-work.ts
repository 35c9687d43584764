import type { ConeKinetics } from "./cone-kinetics.ts";
import { type Curve, refined } from "./curve.ts";
import { GAS_CONSTANT } from "./gas-constant.ts";
import { ratePlace, trailingRates } from "./trailing-rate.ts";

const ZERO_C_IN_KELVIN = 273.15;

/** Work is counted up to here; a cone so far gone has long been a puddle and tells nothing more. */
export const WORK_COUNTED_TO = 1000;
/** Steps over which the speed grows by less than this, in ln, are done by a short series instead of an exponential. */
const SHORT_CLIMB = 0.05;
/** Work below which a whole curve spent at a temperature adds nothing worth counting. */
const NOTHING = 1e-9;

/** A curve made ready, once, for the work of every cone. */
export interface PreparedCurve {
  readonly curve: Curve;
  readonly kelvin: Float64Array;
  readonly seconds: Float64Array;
  /** Trailing rate at each point, °C/h. */
  readonly rates: Float64Array;
  /** The same rates as places among the published ones. */
  readonly ratePlaces: Float64Array;
  /** The hottest point up to and including each one, and from each one on, K. */
  readonly hottestUntil: Float64Array;
  readonly hottestFrom: Float64Array;
}

/** Splits long steps, and works out once what every cone needs to know of the curve. */
export function prepareCurve(given: Curve): PreparedCurve {
  const curve = refined(given);
  const length = curve.tempC.length;
  const rates = trailingRates(curve);
  const kelvin = new Float64Array(length);
  const seconds = new Float64Array(length);
  const ratePlaces = new Float64Array(length);
  const hottestUntil = new Float64Array(length);
  const hottestFrom = new Float64Array(length);
  let hottest = 0;
  for (let n = 0; n < length; n++) {
    kelvin[n] = (curve.tempC[n] as number) + ZERO_C_IN_KELVIN;
    seconds[n] = (curve.minutes[n] as number) * 60;
    ratePlaces[n] = ratePlace(rates[n] as number);
    hottest = Math.max(hottest, kelvin[n] as number);
    hottestUntil[n] = hottest;
  }
  hottest = 0;
  for (let n = length - 1; n >= 0; n--) {
    hottest = Math.max(hottest, kelvin[n] as number);
    hottestFrom[n] = hottest;
  }
  return { curve, kelvin, seconds, rates, ratePlaces, hottestUntil, hottestFrom };
}

export interface ConeWork {
  /** Share of the work that lays the cone down; it is down at 1. Counted up to 1000. */
  readonly work: number;
  /** Minutes at which the work reached 1, or null. */
  readonly downAtMin: number | null;
}

/**
 * The heat work of one cone: W = ∫ A·exp(−E/RT) dt, the cone down at W = 1, with T shifted by the error of the cone's
 * fit at the rate of the last 100 °C, so that the published table comes out exactly.
 *
 * Over a step the kernel is taken as exponential in time (its ends' logarithmic mean) and corrected for the curvature
 * of −E/RT in T: exact to about 1e-7 for steps of 5 °C (golden/heat-work).
 */
export function coneWork(kinetics: ConeKinetics, prepared: PreparedCurve): ConeWork {
  const { kelvin, seconds, ratePlaces } = prepared;
  const thetaK = kinetics.energyJPerMol / GAS_CONSTANT;
  const sixthOfTheta = 1 / (6 * thetaK);
  const lnA = kinetics.lnAPerSecond;
  const [at15, at60, at150] = kinetics.fitErrorC;
  const start = seconds[0] as number;
  const whole = Math.max(1, (seconds[seconds.length - 1] as number) - start);
  const coldK = thetaK / (lnA + Math.log(whole / NOTHING)) - Math.max(at15, at60, at150, 0);
  const from = Math.max(0, firstAbove(prepared.hottestUntil, coldK) - 1);
  const until = Math.min(kelvin.length - 1, firstBelow(prepared.hottestFrom, coldK));

  let work = 0;
  let downAtMin: number | null = null;
  let lastK = 0;
  let exponent = 0;
  let speed = 0;
  for (let n = from; n <= until; n++) {
    const place = ratePlaces[n] as number;
    const shift = place < 1 ? at15 + place * (at60 - at15) : at60 + (place - 1) * (at150 - at60);
    const hotK = (kelvin[n] as number) + shift;
    const nextExponent = lnA - thetaK / hotK;
    if (n > from) {
      const span = (seconds[n] as number) - (seconds[n - 1] as number);
      const climb = nextExponent - exponent;
      const short = climb < SHORT_CLIMB && climb > -SHORT_CLIMB;
      // Mean speed of the step over its first speed: (e^climb − 1)/climb.
      const mean = short
        ? 1 + climb * (1 / 2 + climb * (1 / 6 + climb * (1 / 24 + climb / 120)))
        : Math.expm1(climb) / climb;
      const curvature = short
        ? climb * climb * hotK * sixthOfTheta
        : ((climb * (hotK - lastK)) / (3 * (hotK + lastK))) * (1 - (climb * climb) / 60);
      const added = span * speed * mean * (1 + curvature);
      if (downAtMin === null && work + added >= 1) {
        const share = shareOfStep((1 - work) / added, climb);
        downAtMin = ((seconds[n - 1] as number) + share * span) / 60;
      }
      work += added;
      if (work >= WORK_COUNTED_TO) return { work: WORK_COUNTED_TO, downAtMin };
      // The series' error of 1e-10 a step is wiped out before it can add up.
      speed = short && (n & 63) !== 0 ? speed + speed * climb * mean : Math.exp(nextExponent);
    } else speed = Math.exp(nextExponent);
    exponent = nextExponent;
    lastK = hotK;
  }
  return { work, downAtMin };
}

/** How far into a step a share of its work is done, where the kernel grows by e^climb over it. */
function shareOfStep(workShare: number, climb: number): number {
  return Math.abs(climb) < 1e-6 ? workShare : Math.log1p(workShare * Math.expm1(climb)) / climb;
}

/** Index of the first value above a limit in a rising list; its length where there is none. */
function firstAbove(rising: Float64Array, limit: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((rising[middle] as number) > limit) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Index of the first value at or below a limit in a falling list; its length where there is none. */
function firstBelow(falling: Float64Array, limit: number): number {
  let [low, high] = [0, falling.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((falling[middle] as number) <= limit) high = middle;
    else low = middle + 1;
  }
  return low;
}
