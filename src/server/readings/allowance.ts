/** Far more than any probe has to say; and what a logger that was away for a night at one a second sends at once. */
const A_SECOND = 5000;
const AT_ONCE = 50_000;

/** How many readings each logger may still send: so many a second, and some saved up. Time comes in as milliseconds. */
export class Allowance {
  readonly #left = new Map<string, { readings: number; at: number }>();

  /** Takes from a logger's allowance. Gives 0 where there was enough, else how long to wait, in milliseconds. */
  take(loggerId: string, readings: number, now: number): number {
    const had = this.#left.get(loggerId) ?? { readings: AT_ONCE, at: now };
    const saved = Math.min(AT_ONCE, had.readings + (Math.max(0, now - had.at) / 1000) * A_SECOND);
    if (readings > saved) return Math.ceil(((readings - saved) / A_SECOND) * 1000);
    this.#left.set(loggerId, { readings: saved - readings, at: now });
    return 0;
  }
}
