import { type ConeName, conePlace } from "../cones/cone.ts";
import { CONE_TABLE } from "../cones/cone-table.ts";
import { CONE_KINETICS } from "./cone-kinetics.ts";
import type { PreparedCurve } from "./cone-work.ts";
import type { Curve } from "./curve.ts";
import { PUBLISHED_RATES } from "./trailing-rate.ts";

/** Something to know before trusting a heat work: facts, and a sentence made of them. */
export interface HeatWorkWarning {
  readonly code:
    | "slow-rate"
    | "fast-rate"
    | "below-published-range"
    | "borrowed-energy"
    | "order-crossed"
    | "beyond-the-table"
    | "starts-hot"
    | "ends-hot"
    | "coarse-readings";
  readonly message: string;
}

interface Reached {
  readonly coneDown: ConeName | null;
  readonly next: ConeName | null;
  readonly peakC: number;
  readonly cones: readonly { readonly cone: ConeName; readonly work: number }[];
}

/** Work of less than this share of a cone tells nothing worth a warning about it. */
const WORTH_A_WARNING = 0.25;
/** A firing that begins above this has lost part of its work. */
const HOT_START_C = 300;
/** A log that ends within this of its peak has no cooling in it. */
const COOLED_BY_C = 100;
/** Readings further apart than this, close to the peak, hide what happened between them. */
const COARSE_C = 30;

/** Says where the published data, or the log, do not reach what is asked of them. */
export function warningsOf(
  reached: Reached,
  outOfOrder: readonly ConeName[],
  curve: Curve,
  prepared: PreparedCurve,
): HeatWorkWarning[] {
  const { coneDown, next, peakC } = reached;
  const warnings: HeatWorkWarning[] = [];
  const warn = (code: HeatWorkWarning["code"], message: string): void => void warnings.push({ code, message });
  const work = (cone: ConeName | null): number => (cone === null ? 0 : (reached.cones[conePlace(cone)]?.work ?? 0));
  const counted = [coneDown, next].filter((cone) => cone !== null && work(cone) >= WORTH_A_WARNING) as ConeName[];
  const [slowest, , fastest] = PUBLISHED_RATES;

  if (counted.length > 0) {
    const rate = rateAtPeak(prepared);
    const climbed = `It came up its last 100 °C at ${rate.toFixed(0)} °C/h`;
    if (rate < slowest) {
      warn(
        "slow-rate",
        `${climbed}; no cone is published below ${slowest}, and slower than that cones pass one another.`,
      );
    }
    if (rate > fastest) {
      warn(
        "fast-rate",
        `${climbed}; self-supporting cones are published up to ${fastest}. Trust a cone on the shelf more.`,
      );
    }
  }
  for (const cone of counted) {
    const { at15C, at60C } = CONE_TABLE[conePlace(cone)] as (typeof CONE_TABLE)[number];
    const coolest = at15C ?? at60C;
    if (peakC < coolest) {
      const low = `Cone ${cone} got ${work(cone).toFixed(2)} of its work although the peak, ${peakC.toFixed(0)} °C, is below`;
      warn(
        "below-published-range",
        `${low} the ${coolest} °C of its slowest published rate: a long hold, extrapolated.`,
      );
    }
    const { borrowedFrom } = CONE_KINETICS[conePlace(cone)] as (typeof CONE_KINETICS)[number];
    if (borrowedFrom !== null) {
      warn(
        "borrowed-energy",
        `Cone ${cone} has two published values only; how it takes slow rates and holds is borrowed from cone ${borrowedFrom}.`,
      );
    }
  }
  if (outOfOrder.length > 0) {
    warn(
      "order-crossed",
      `By these numbers cone ${outOfOrder.join(", ")} is down before a cooler one: the order was kept, and the result is not sure.`,
    );
  }
  if (coneDown === null) warn("beyond-the-table", "No cone is down: the firing stayed below cone 022.");
  if (next === null)
    warn("beyond-the-table", "Every cone is down: the firing went beyond cone 14, the last of the table.");
  logWarnings(curve, peakC, warn);
  return warnings;
}

function logWarnings({ tempC }: Curve, peakC: number, warn: (code: HeatWorkWarning["code"], message: string) => void) {
  const first = tempC[0] as number;
  const last = tempC[tempC.length - 1] as number;
  if (first > HOT_START_C) {
    warn("starts-hot", `The first reading is ${first.toFixed(0)} °C: heat work done before it is not counted.`);
  }
  if (peakC - last < COOLED_BY_C && peakC > HOT_START_C) {
    warn(
      "ends-hot",
      "The log ends close to its peak: cooling, which adds 0.1 to 0.2 of a cone's work, is not counted.",
    );
  }
  let widest = 0;
  for (let n = 1; n < tempC.length; n++) {
    const low = Math.min(tempC[n - 1] as number, tempC[n] as number);
    if (low > peakC - 100) widest = Math.max(widest, Math.abs((tempC[n] as number) - (tempC[n - 1] as number)));
  }
  if (widest > COARSE_C) {
    warn(
      "coarse-readings",
      `Readings near the peak are up to ${widest.toFixed(0)} °C apart; between them a straight line is assumed.`,
    );
  }
}

/** The trailing rate where the curve is hottest for the first time, °C/h. */
function rateAtPeak({ kelvin, rates }: PreparedCurve): number {
  let hottest = 0;
  for (let n = 1; n < kelvin.length; n++) if ((kelvin[n] as number) > (kelvin[hottest] as number)) hottest = n;
  return rates[hottest] as number;
}
