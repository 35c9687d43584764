import type { Chance } from "../../measures/seeded-chance.ts";
import { type Crowding, TOUCH_MM } from "./crowding.ts";
import { Descent } from "./descent.ts";

/** How hard to try to part the pieces of a level. */
export interface Effort {
  /** Rounds of descent, each with the weights raised where the last one stuck. */
  readonly rounds: number;
  /** Give up early when the crowding has not fallen below this share of its best for four rounds. */
  readonly patience: number;
  /** Downhill steps in a round. */
  readonly steps: number;
  /**
   * Give up after a round that leaves more than this, in mm². Of the trials that stuck above 20 mm² at first only one in
   * sixty ever parted, at six times the work: it pays better to try something else.
   */
  readonly hopeless: number;
}

export const QUICK: Effort = { rounds: 7, patience: 3, steps: 40, hopeless: 12 };
export const THOROUGH: Effort = { rounds: 24, patience: 8, steps: 60, hopeless: 400 };

/**
 * Parts the pieces of one level: moves and turns them all together until none overlaps anything. Pairs that keep
 * colliding weigh more from round to round (guided local search, Voudouris and Tsang 1999), and now and then the piece
 * that suffers most is set down elsewhere, or changes places with another.
 */
export class Separation {
  private readonly descent: Descent;
  private readonly gradient: Float64Array;
  private readonly best: Float64Array;

  readonly crowding: Crowding;

  constructor(crowding: Crowding) {
    this.crowding = crowding;
    this.descent = new Descent(crowding.capacity);
    this.gradient = new Float64Array(3 * crowding.capacity);
    this.best = new Float64Array(3 * crowding.capacity);
  }

  /**
   * @param kindOf each piece's kind; those the crowding holds come first and stay where they are
   * @param places changed in place: parted where it worked, the least crowded found where it did not
   * @returns true where every piece stands clear
   */
  part(
    kindOf: Int32Array,
    count: number,
    places: Float64Array,
    effort: Effort,
    chance: Chance,
    spread: number,
  ): boolean {
    const { crowding, gradient, best } = this;
    crowding.forgiveAll(count);
    const enough = TOUCH_MM * TOUCH_MM * 0.5;
    let least = Number.POSITIVE_INFINITY;
    let sinceBetter = 0;
    for (let round = 0; round < effort.rounds; round++) {
      this.descent.run(crowding, kindOf, count, places, effort.steps, enough);
      this.raiseWeights(kindOf, count, places);
      if (crowding.deepest <= TOUCH_MM) return true;
      const plain = this.plainEnergy;
      if (plain > effort.hopeless) return false;
      if (plain < least * 0.98) {
        least = plain;
        best.set(places.subarray(0, 3 * count));
        sinceBetter = 0;
      } else if (++sinceBetter > effort.patience) break;
      if (round % 3 === 2) this.unsettle(kindOf, count, places, chance, spread);
    }
    places.set(best.subarray(0, 3 * count));
    crowding.measure(kindOf, count, places, gradient);
    return crowding.deepest <= TOUCH_MM;
  }

  /** One plain descent, weights as they are; leaves the pains and the deepest overlap of where it ends. */
  descend(kindOf: Int32Array, count: number, places: Float64Array, steps: number): number {
    this.descent.run(this.crowding, kindOf, count, places, steps, TOUCH_MM * TOUCH_MM * 0.5);
    return this.crowding.measure(kindOf, count, places, this.gradient);
  }

  private plainEnergy = 0;

  /** Raises the weight of each pair that still overlaps in proportion to its depth, and measures without weights. */
  private raiseWeights(kindOf: Int32Array, count: number, places: Float64Array): void {
    const { crowding, gradient } = this;
    crowding.measure(kindOf, count, places, gradient);
    const deepest = crowding.deepest;
    if (deepest <= TOUCH_MM) return;
    let plain = 0;
    for (let i = 0; i < count; i++) {
      // Each piece's own pain tells whether its pairs are worth looking at.
      const pain = crowding.pain[i] as number;
      if (pain <= 0) continue;
      plain += pain;
      crowding.edgeWeight[i] = Math.min(50, (crowding.edgeWeight[i] as number) * 1.15);
      for (let j = i + 1; j < count; j++) {
        if ((crowding.pain[j] as number) <= 0) continue;
        const at = i * crowding.capacity + j;
        const reach = (crowding.reach[kindOf[i] as number] as number) + (crowding.reach[kindOf[j] as number] as number);
        const dx = (places[3 * i] as number) - (places[3 * j] as number);
        const dy = (places[3 * i + 1] as number) - (places[3 * j + 1] as number);
        if (dx * dx + dy * dy < reach * reach) {
          crowding.pairWeight[at] = Math.min(50, (crowding.pairWeight[at] as number) * 1.35);
        }
      }
    }
    this.plainEnergy = plain;
  }

  /** Sets the piece that suffers most down somewhere better, or lets it change places with another. */
  private unsettle(kindOf: Int32Array, count: number, places: Float64Array, chance: Chance, spread: number): void {
    const { crowding } = this;
    const { held } = crowding;
    let worst = -1;
    let most = 0;
    for (let i = held; i < count; i++) {
      const pain = (crowding.pain[i] as number) * (0.5 + chance.next());
      if (pain > most) {
        most = pain;
        worst = i;
      }
    }
    if (worst < 0) return;
    if (chance.next() < 0.4 && count - held > 1) {
      const other = held + chance.below(count - held);
      for (let k = 0; k < 2; k++) {
        const kept = places[3 * worst + k] as number;
        places[3 * worst + k] = places[3 * other + k] as number;
        places[3 * other + k] = kept;
      }
      return;
    }
    this.settle(kindOf, count, places, worst, 24, chance, spread);
  }

  /**
   * Sets one piece down in the least crowded of a number of random places.
   *
   * @param spread how far from the axis to look, in millimetres
   * @returns the crowding it meets there
   */
  settle(
    kindOf: Int32Array,
    count: number,
    places: Float64Array,
    piece: number,
    looks: number,
    chance: Chance,
    spread: number,
  ): number {
    const { crowding, gradient } = this;
    const swing = crowding.swing[kindOf[piece] as number] as number;
    let least = Number.POSITIVE_INFINITY;
    let bestX = 0;
    let bestY = 0;
    let bestTurn = 0;
    crowding.prepare(kindOf, count, places);
    for (let look = 0; look < looks; look++) {
      const away = spread * Math.sqrt(chance.next());
      const angle = chance.next() * 2 * Math.PI;
      const turn = chance.next() * 2 * Math.PI * swing;
      places[3 * piece] = away * Math.cos(angle);
      places[3 * piece + 1] = away * Math.sin(angle);
      places[3 * piece + 2] = turn;
      const energy = crowding.measureOne(count, places, gradient, piece, least);
      if (energy < least) {
        least = energy;
        bestX = places[3 * piece] as number;
        bestY = places[3 * piece + 1] as number;
        bestTurn = turn;
        if (energy === 0) break;
      }
    }
    places[3 * piece] = bestX;
    places[3 * piece + 1] = bestY;
    places[3 * piece + 2] = bestTurn;
    return least;
  }
}
