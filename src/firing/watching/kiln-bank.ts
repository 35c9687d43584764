import { NOISE } from "../calibration/evidence.ts";
import { inverse } from "../calibration/least-squares.ts";
import { PARAMETERS, type Priors, valuesFromSteps, withValues } from "../calibration/parameters.ts";
import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";
import { LiveKiln } from "./live-kiln.ts";
import type { LiveStep } from "./live-steps.ts";

/** A kiln to be watched, as described, and what is known of it. */
export interface WatchedKiln {
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  /** The probe's height above the floor, metres; the middle of the chamber where it is not given. */
  readonly probeHeightM?: number | undefined;
  /** What a calibration knows, each value with its sigma (`priorsOf`); else the usual priors. */
  readonly priors?: Priors | undefined;
}

/** What the readings so far tell: how far from the bank's middle, in sigmas of the priors, and how sure. */
export interface BankEstimate {
  readonly away: Float64Array;
  readonly covariance: readonly Float64Array[];
}

const SIZE = PARAMETERS.length;
const COMPARED_EVERY_MIN = 15;
/** A comparison further off than this many sigmas counts as one so far off: the model may be wrong there, not the kiln. */
const MOST_SIGMAS = 3;

/**
 * A bank of kilns around one in the middle: for each unknown of a calibration, one that differs in it alone. All live
 * through the readings; how their answers differ tells which kiln it is, as the derivatives of a calibration do.
 */
export class KilnBank {
  readonly kilns: readonly LiveKiln[];
  /** Where the middle is, and how far the others are from it, in sigmas of the priors. */
  readonly middle: Float64Array;
  readonly apart: Float64Array;
  private readonly information = Array.from({ length: SIZE }, (_, i) =>
    Float64Array.from({ length: SIZE }, (_, j) => (i === j ? 1 : 0)),
  );
  private readonly slope: Float64Array;
  private last: LiveStep;
  private comparedMin: number;
  private first = true;

  constructor(watched: WatchedKiln, middle: Float64Array, apart: Float64Array, start: LiveStep) {
    const { kiln, load, priors = {} } = watched;
    const at = (steps: Float64Array): LiveKiln =>
      new LiveKiln(
        withValues(kiln, load, valuesFromSteps(steps, priors)),
        watched.probeHeightM ?? kiln.depthM / 2,
        start,
      );
    this.middle = middle;
    this.apart = apart;
    this.kilns = [
      at(middle),
      ...PARAMETERS.map((_, i) => at(middle.map((each, j) => (i === j ? each + (apart[i] as number) : each)))),
    ];
    // The prior pulls toward the calibrated kiln, wherever the middle is.
    this.slope = middle.slice();
    this.last = start;
    this.comparedMin = start.minute;
  }

  /** All live through a step. @returns whether it told something */
  live(step: LiveStep): boolean {
    if (step.mode !== this.last.mode || step.gap !== this.last.gap) {
      this.first = true;
      this.comparedMin = this.last.minute;
    }
    this.last = step;
    for (const kiln of this.kilns) kiln.live(step);
    if (step.gap || step.minute - this.comparedMin < COMPARED_EVERY_MIN - 1e-6) return false;
    const kept = this.first ? 0 : Math.exp((this.comparedMin - step.minute) / NOISE.tempLastsMin);
    this.first = false;
    this.comparedMin = step.minute;
    this.learn(this.kilns.map((kiln) => kiln.compare(kept)));
    return true;
  }

  /** The most probable kiln by all that was compared: one step of Gauss and Newton's from the middle. */
  estimate(): BankEstimate {
    const covariance = inverse(this.information);
    const away = Float64Array.from(
      covariance,
      (row) => -row.reduce((sum, each, j) => sum + each * (this.slope[j] as number), 0),
    );
    return { away, covariance };
  }

  /** A quantity of each kiln as what it is for the most probable one, and one sigma of it; null where the middle has none. */
  combined(
    values: readonly (number | null)[],
    { away, covariance }: BankEstimate,
  ): { value: number; sigma: number } | null {
    const middle = values[0];
    if (middle === undefined || middle === null) return null;
    const slopes = Float64Array.from({ length: SIZE }, (_, i) => {
      const value = values[i + 1] ?? middle;
      return (value - middle) / (this.apart[i] as number);
    });
    let value = middle;
    let variance = 0;
    for (let i = 0; i < SIZE; i++) {
      value += (slopes[i] as number) * (away[i] as number);
      for (let j = 0; j < SIZE; j++) {
        variance += (slopes[i] as number) * (slopes[j] as number) * ((covariance[i] as Float64Array)[j] as number);
      }
    }
    return { value, sigma: Math.sqrt(Math.max(0, variance)) };
  }

  private learn(inSigmas: readonly number[]): void {
    const middle = inSigmas[0] as number;
    const weight = Math.min(1, MOST_SIGMAS / Math.abs(middle));
    const slopes = PARAMETERS.map((_, i) => ((inSigmas[i + 1] as number) - middle) / (this.apart[i] as number));
    for (let i = 0; i < SIZE; i++) {
      const row = this.information[i] as Float64Array;
      const own = (slopes[i] as number) * weight;
      this.slope[i] = (this.slope[i] as number) + own * middle;
      for (let j = 0; j < SIZE; j++) row[j] = (row[j] as number) + own * (slopes[j] as number);
    }
  }
}
