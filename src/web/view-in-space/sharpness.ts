/** Slower than this between two pictures, turning looks like stumbling. Twenty a second. */
const SLOW_MS = 50;
/** So long after the last picture, the turn is over. */
const PAUSE_MS = 250;
/** So long between two pictures says nothing of the machine: she let go meanwhile. */
const REST_MS = 1000;
/** Slow pictures in a row before it is believed: one may be late for another reason. */
const WATCHED = 2;
const LEAST = 0.5;
/** At one step, no fewer than so much of the dots before. */
const STEEPEST = 0.4;

/**
 * How many dots to draw for each of the screen's, while the kiln is turned on a slow machine: fewer, so that it turns
 * smoothly; all of them once it stands. What it has learnt of the machine it keeps.
 */
export class Sharpness {
  readonly #full: number;
  #turning: number;
  #lastMs = Number.NEGATIVE_INFINITY;
  #slow = 0;

  constructor(full: number) {
    this.#full = full;
    this.#turning = full;
  }

  /** For a picture drawn in the middle of a turn. */
  whileTurning(nowMs: number): number {
    const betweenMs = nowMs - this.#lastMs;
    this.#lastMs = nowMs;
    if (betweenMs > REST_MS || betweenMs <= SLOW_MS) this.#slow = 0;
    else this.#slow += 1;
    if (this.#slow >= WATCHED) {
      this.#turning = Math.max(LEAST, this.#turning * Math.max(STEEPEST, Math.sqrt(SLOW_MS / betweenMs)));
      this.#slow = 0;
    }
    return this.#turning;
  }

  /** For a picture that will stand. */
  standing(): number {
    this.#slow = 0;
    return this.#full;
  }
}

/** How long after the last turn the picture is drawn once more, sharp. */
export const STANDING_AFTER_MS = PAUSE_MS;
