/** Slower than this between two pictures, turning looks like stumbling. Twenty a second. */
const SLOW_MS = 50;
/** So long after the last picture, the next one begins a new turn. */
const PAUSE_MS = 250;
/** Pictures watched before it is judged. */
const WATCHED = 3;
const LEAST = 0.5;

/**
 * How many dots to draw for each of the screen's, while the kiln is turned on a slow machine: fewer, so that it turns
 * smoothly; all of them once it stands still.
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
    if (betweenMs > PAUSE_MS * 4) this.#slow = 0;
    else this.#slow = betweenMs > SLOW_MS ? this.#slow + 1 : Math.max(0, this.#slow - 1);
    if (this.#slow >= WATCHED) {
      this.#turning = Math.max(LEAST, this.#turning / Math.SQRT2);
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
