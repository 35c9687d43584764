import type { Crowding } from "./crowding.ts";

const MEMORY = 6;
/** Every so many steps the crowding has to have fallen by this share, or the descent has run into a hollow. */
const LOOK_BACK = 5;
const LEAST_FALL = 0.02;

/**
 * Walks all pieces of a level together downhill on their crowding: limited-memory BFGS with a backtracking step
 * (Nocedal and Wright, Numerical Optimization, 2nd ed. 2006, algorithms 7.4 and 7.5). One of these serves one level's
 * search and keeps its arrays.
 */
export class Descent {
  private readonly steps: Float64Array[];
  private readonly turns: Float64Array[];
  private readonly curvature = new Float64Array(MEMORY);
  private readonly share = new Float64Array(MEMORY);
  private readonly gradient: Float64Array;
  private readonly direction: Float64Array;
  private readonly trial: Float64Array;
  private readonly trialGradient: Float64Array;

  constructor(capacity: number) {
    const size = 3 * capacity;
    this.steps = Array.from({ length: MEMORY }, () => new Float64Array(size));
    this.turns = Array.from({ length: MEMORY }, () => new Float64Array(size));
    this.gradient = new Float64Array(size);
    this.direction = new Float64Array(size);
    this.trial = new Float64Array(size);
    this.trialGradient = new Float64Array(size);
  }

  /**
   * @param places changed in place to the best found
   * @param enough stop once the crowding is this small
   * @returns the crowding there
   */
  run(
    crowding: Crowding,
    kindOf: Int32Array,
    count: number,
    places: Float64Array,
    mostSteps: number,
    enough: number,
  ): number {
    const size = 3 * count;
    const from = 3 * crowding.held;
    const { gradient, direction, trial, trialGradient } = this;
    let energy = crowding.measure(kindOf, count, places, gradient);
    let kept = 0;
    let newest = -1;
    let before = energy;
    for (let step = 0; step < mostSteps && energy > enough; step++) {
      this.downhill(size, from, kept, newest);
      let slope = 0;
      let longest = 0;
      for (let k = from; k < size; k++) {
        slope += (direction[k] as number) * (gradient[k] as number);
        longest = Math.max(longest, Math.abs(direction[k] as number));
      }
      if (slope >= 0 || longest < 1e-12) {
        if (kept === 0) break;
        kept = 0;
        newest = -1;
        continue;
      }
      // No piece moves further than a few centimetres at once: the overlaps it would meet there are not seen yet.
      let length = Math.min(1, 40 / longest);
      if (kept === 0) length = Math.min(length, 0.5);
      let after = energy;
      let tries = 0;
      for (; tries < 8; tries++) {
        for (let k = 0; k < size; k++) {
          trial[k] = (places[k] as number) + (k < from ? 0 : length * (direction[k] as number));
        }
        after = crowding.measure(kindOf, count, trial, trialGradient);
        if (after <= energy + 1e-4 * length * slope) break;
        length *= tries === 0 ? 0.5 : 0.3;
      }
      if (tries === 8) {
        if (kept === 0) break;
        kept = 0;
        newest = -1;
        continue;
      }
      newest = (newest + 1) % MEMORY;
      const stepOf = this.steps[newest] as Float64Array;
      const turnOf = this.turns[newest] as Float64Array;
      let along = 0;
      for (let k = from; k < size; k++) {
        const moved = (trial[k] as number) - (places[k] as number);
        const turned = (trialGradient[k] as number) - (gradient[k] as number);
        stepOf[k] = moved;
        turnOf[k] = turned;
        along += moved * turned;
        gradient[k] = trialGradient[k] as number;
        places[k] = trial[k] as number;
      }
      if (along > 1e-14) {
        this.curvature[newest] = 1 / along;
        kept = Math.min(MEMORY, kept + 1);
      } else {
        kept = 0;
        newest = -1;
      }
      energy = after;
      if (step % LOOK_BACK === LOOK_BACK - 1) {
        if (energy > before * (1 - LEAST_FALL)) break;
        before = energy;
      }
    }
    return energy;
  }

  /** The two-loop recursion: `direction` from the gradient and the remembered steps. */
  private downhill(size: number, from: number, kept: number, newest: number): void {
    const { gradient, direction } = this;
    for (let k = from; k < size; k++) direction[k] = -(gradient[k] as number);
    if (kept === 0) {
      // Each overlap of depth d pushes with 2d: half the gradient parts the pieces.
      for (let k = from; k < size; k++) direction[k] = (direction[k] as number) * 0.5;
      return;
    }
    for (let m = 0; m < kept; m++) {
      const at = (newest - m + MEMORY) % MEMORY;
      const step = this.steps[at] as Float64Array;
      const turn = this.turns[at] as Float64Array;
      let dot = 0;
      for (let k = from; k < size; k++) dot += (step[k] as number) * (direction[k] as number);
      const share = dot * (this.curvature[at] as number);
      this.share[at] = share;
      for (let k = from; k < size; k++) direction[k] = (direction[k] as number) - share * (turn[k] as number);
    }
    const last = this.turns[newest] as Float64Array;
    let square = 0;
    for (let k = from; k < size; k++) square += (last[k] as number) * (last[k] as number);
    const scale = square > 1e-20 ? 1 / ((this.curvature[newest] as number) * square) : 0.5;
    for (let k = from; k < size; k++) direction[k] = (direction[k] as number) * scale;
    for (let m = kept - 1; m >= 0; m--) {
      const at = (newest - m + MEMORY) % MEMORY;
      const step = this.steps[at] as Float64Array;
      const turn = this.turns[at] as Float64Array;
      let dot = 0;
      for (let k = from; k < size; k++) dot += (turn[k] as number) * (direction[k] as number);
      const change = (this.share[at] as number) - dot * (this.curvature[at] as number);
      for (let k = from; k < size; k++) direction[k] = (direction[k] as number) + change * (step[k] as number);
    }
  }
}
