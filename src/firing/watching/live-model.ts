import { PARAMETERS, type ParameterValues, valuesFromSteps } from "../calibration/parameters.ts";
import { type BankEstimate, KilnBank, type WatchedKiln } from "./kiln-bank.ts";
import type { LiveStep } from "./live-steps.ts";

const SIZE = PARAMETERS.length;
/** Kilns of the bank differ from its middle by half of what is unsure, within these, in sigmas of the priors. */
const APART = { share: 0.5, least: 0.25, most: 0.5 };
/** The bank moves to where the readings point once that is so far from its middle, and not again for so long. */
const MOVES = { sigmas: 0.4, everyMin: 30, rounds: 2, longest: 1.5, furthest: 3 };

/**
 * The kiln being fired, learned from its readings as they come: a bank of kilns round the calibrated one, moved to where
 * the readings point as soon as they do. While the controller holds the probe little is learned; at full power and once
 * it is off, much.
 */
export class LiveModel {
  readonly roomC: number;
  private bank: KilnBank;
  private readonly watched: WatchedKiln;
  private readonly start: LiveStep;
  private readonly steps: LiveStep[] = [];
  private movedMin: number;
  private estimated: BankEstimate | null = null;

  constructor(watched: WatchedKiln, startMin: number, startC: number) {
    this.watched = watched;
    this.roomC = watched.kiln.roomC;
    this.start = { minute: startMin, tempC: startC, mode: "follow", gap: false };
    this.bank = new KilnBank(watched, new Float64Array(SIZE), new Float64Array(SIZE).fill(APART.most), this.start);
    this.movedMin = startMin;
  }

  /** One step more of the firing. */
  live(step: LiveStep): void {
    this.steps.push(step);
    if (!this.bank.live(step)) return;
    this.estimated = null;
    if (step.minute - this.movedMin < MOVES.everyMin) return;
    for (let round = 0; round < MOVES.rounds && this.furthest() > MOVES.sigmas; round++) this.move(step.minute);
  }

  /** The last step, or the start. */
  now(): LiveStep {
    return this.steps.at(-1) ?? this.start;
  }

  /** The bank and what it points to. */
  known(): { readonly bank: KilnBank; readonly estimate: BankEstimate } {
    this.estimated ??= this.bank.estimate();
    return { bank: this.bank, estimate: this.estimated };
  }

  /** The most probable kiln, and how sure each value is: one sigma, of ln for a factor, else in its unit. */
  learned(): { readonly values: ParameterValues; readonly sigmas: ParameterValues } {
    const { estimate } = this.known();
    const priors = this.watched.priors ?? {};
    const point = this.bank.middle.map((each, i) => each + (estimate.away[i] as number));
    const sigmas = PARAMETERS.map(({ name, priorSigma }, i) => [
      name,
      Math.sqrt((estimate.covariance[i] as Float64Array)[i] as number) * (priors[name]?.sigma ?? priorSigma),
    ]);
    return { values: valuesFromSteps(point, priors), sigmas: Object.fromEntries(sigmas) as ParameterValues };
  }

  private furthest(): number {
    return this.known().estimate.away.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  }

  /** A new bank about the most probable kiln, which lives through all again. */
  private move(minute: number): void {
    const { away, covariance } = this.known().estimate;
    const longest = this.furthest();
    const share = Math.min(1, MOVES.longest / longest);
    const middle = this.bank.middle.map((each, i) =>
      Math.max(-MOVES.furthest, Math.min(MOVES.furthest, each + share * (away[i] as number))),
    );
    const apart = Float64Array.from(covariance, (row, i) =>
      Math.max(APART.least, Math.min(APART.most, APART.share * Math.sqrt(row[i] as number))),
    );
    this.bank = new KilnBank(this.watched, middle, apart, this.start);
    for (const step of this.steps) this.bank.live(step);
    this.estimated = null;
    this.movedMin = minute;
  }
}
