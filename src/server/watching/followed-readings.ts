import type { ProbeReadings } from "../readings/reading-keeper.ts";

/** Closer together than this, readings tell a watch nothing more. */
const THINNED_TO_MS = 1000;

/** A firing's readings as they are watched: one probe's, in order of time, at most one a second. */
export class FollowedReadings {
  readonly #startedMs: number;
  readonly #wished: string | null;
  #probe: string | null = null;
  #latest: { readonly at: string; readonly tempC: number; readonly probe: string } | null = null;
  #lastMs = Number.NEGATIVE_INFINITY;

  /** @param wished the probe that the kiln is steered by; another one is followed only where that reads nothing */
  constructor(startedMs: number, wished: string | null) {
    this.#startedMs = startedMs;
    this.#wished = wished;
  }

  /** The newest reading of the probe followed. */
  get latest() {
    return this.#latest;
  }

  /** The probe followed; null before the first reading. */
  get probe(): string | null {
    return this.#probe;
  }

  /** What of new readings there is to watch: minutes since the start, and °C. Null where there is nothing. */
  take({ probe, readings }: Omit<ProbeReadings, "firingId">): { minutes: Float64Array; tempC: Float64Array } | null {
    if (!this.#follows(probe)) return null;
    const [minutes, temps]: [number[], number[]] = [[], []];
    for (const { at, tempC } of readings.toSorted((a, b) => (a.at < b.at ? -1 : 1))) {
      const ms = Date.parse(at);
      // One that comes late is on the disk; what followed it has been watched already.
      if (ms < this.#startedMs || ms <= this.#lastMs) continue;
      this.#latest = { at, tempC, probe };
      if (ms - this.#lastMs < THINNED_TO_MS) continue;
      this.#lastMs = ms;
      minutes.push((ms - this.#startedMs) / 60_000);
      temps.push(tempC);
    }
    if (minutes.length === 0) return null;
    return { minutes: Float64Array.from(minutes), tempC: Float64Array.from(temps) };
  }

  /** Whether the probe that should be followed reads after all, and another is: then all has to be followed anew. */
  isOfAnother(probe: string): boolean {
    return probe === this.#wished && this.#probe !== null && this.#probe !== probe;
  }

  #follows(probe: string): boolean {
    this.#probe ??= probe;
    return this.#probe === probe;
  }
}
