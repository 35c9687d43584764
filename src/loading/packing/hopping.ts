import type { Chance } from "../../measures/seeded-chance.ts";
import { type Crowding, TOUCH_MM } from "./crowding.ts";
import type { Separation } from "./separation.ts";

// Descents without a better hollow before the hopping gives up.
const DESCENT_STEPS = 60;
// How much worse a hollow may be and still be hopped on from, as a share of the present one.
const TOLERATED = 0.02;

/**
 * Hops from hollow to hollow of a level's crowding: two pieces much of a size change places, a crowded piece is set down
 * where there is room, or a neighbourhood is shaken; then all are parted again, and what came out is kept where it is no
 * worse (basin hopping; Grosso, Jamali, Locatelli and Schoen, J. Global Optim. 47, 2010, for circles in a circle).
 * Slower than `Separation` and finds what that does not.
 */
export class Hopping {
  private readonly separation: Separation;
  private readonly crowding: Crowding;
  private readonly trial: Float64Array;
  private readonly sizeOrder: Int32Array;

  constructor(separation: Separation) {
    this.separation = separation;
    this.crowding = separation.crowding;
    this.trial = new Float64Array(3 * this.crowding.capacity);
    this.sizeOrder = new Int32Array(this.crowding.capacity);
  }

  /**
   * @param kindOf each piece's kind; those the crowding holds come first and stay where they are
   * @param places changed in place to the least crowded found
   * @param patience hops without a better hollow before it gives up
   * @param spread how far from the axis pieces may be set down, in millimetres
   * @param mayGoOn asked before each hop
   * @returns true where every piece stands clear
   */
  hop(
    kindOf: Int32Array,
    count: number,
    places: Float64Array,
    patience: number,
    spread: number,
    chance: Chance,
    mayGoOn: () => boolean,
  ): boolean {
    const { crowding, trial, separation } = this;
    crowding.forgiveAll(count);
    this.orderBySize(kindOf, count);
    let least = separation.descend(kindOf, count, places, DESCENT_STEPS);
    let best = least;
    let since = 0;
    while (crowding.deepest > TOUCH_MM && since < patience && mayGoOn()) {
      trial.set(places.subarray(0, 3 * count));
      this.disturb(kindOf, count, trial, spread, chance);
      const energy = separation.descend(kindOf, count, trial, DESCENT_STEPS);
      if (energy < least * (1 + TOLERATED * chance.next() ** 2) || crowding.deepest <= TOUCH_MM) {
        since = energy < best * 0.999 ? 0 : since + 1;
        least = energy;
        best = Math.min(best, energy);
        places.set(trial.subarray(0, 3 * count));
        if (crowding.deepest <= TOUCH_MM) return true;
      } else since++;
    }
    // The pains and depths of the places returned, not of the last trial.
    separation.descend(kindOf, count, places, 0);
    return crowding.deepest <= TOUCH_MM;
  }

  private orderBySize(kindOf: Int32Array, count: number): void {
    const { sizeOrder } = this;
    const { reach } = this.crowding;
    for (let i = 0; i < count; i++) sizeOrder[i] = i;
    sizeOrder
      .subarray(0, count)
      .sort((a, b) => (reach[kindOf[a] as number] as number) - (reach[kindOf[b] as number] as number) || a - b);
  }

  private disturb(kindOf: Int32Array, count: number, places: Float64Array, spread: number, chance: Chance): void {
    const dice = chance.next();
    if (dice < 0.55 && this.swapAlike(kindOf, count, places, chance)) return;
    if (dice < 0.8) {
      const piece = chance.next() < 0.7 ? this.somePained(count, chance) : this.someFree(count, chance);
      this.separation.settle(kindOf, count, places, piece, 60, chance, spread);
      return;
    }
    this.shake(kindOf, count, places, chance);
  }

  /** Lets two pieces of different kinds, near each other in size, change places. */
  private swapAlike(kindOf: Int32Array, count: number, places: Float64Array, chance: Chance): boolean {
    for (let attempt = 0; attempt < 8; attempt++) {
      const at = chance.below(count);
      const step = 1 + Math.floor(-Math.log(1 - chance.next()) * 2);
      const to = at + (chance.next() < 0.5 ? step : -step);
      if (to < 0 || to >= count) continue;
      const a = this.sizeOrder[at] as number;
      const b = this.sizeOrder[to] as number;
      if (kindOf[a] === kindOf[b] || Math.min(a, b) < this.crowding.held) continue;
      for (let k = 0; k < 2; k++) {
        const kept = places[3 * a + k] as number;
        places[3 * a + k] = places[3 * b + k] as number;
        places[3 * b + k] = kept;
      }
      return true;
    }
    return false;
  }

  private someFree(count: number, chance: Chance): number {
    const { held } = this.crowding;
    return held + chance.below(count - held);
  }

  private somePained(count: number, chance: Chance): number {
    const { pain } = this.crowding;
    let chosen = this.crowding.held;
    let total = 0;
    for (let i = chosen; i < count; i++) {
      const weight = Math.sqrt(pain[i] as number);
      total += weight;
      if (chance.next() * total < weight) chosen = i;
    }
    return chosen;
  }

  /** Shifts and turns the pieces round some piece a little. */
  private shake(kindOf: Int32Array, count: number, places: Float64Array, chance: Chance): void {
    const middle = this.someFree(count, chance);
    const x = places[3 * middle] as number;
    const y = places[3 * middle + 1] as number;
    const size = this.crowding.reach[kindOf[middle] as number] as number;
    const strength = size * (0.2 + 0.8 * chance.next());
    const near = (size * (2 + 2 * chance.next())) ** 2;
    for (let i = this.crowding.held; i < count; i++) {
      const dx = (places[3 * i] as number) - x;
      const dy = (places[3 * i + 1] as number) - y;
      if (dx * dx + dy * dy > near) continue;
      for (let k = 0; k < 3; k++) {
        places[3 * i + k] = (places[3 * i + k] as number) + strength * (chance.next() - 0.5) * 2;
      }
    }
  }
}
