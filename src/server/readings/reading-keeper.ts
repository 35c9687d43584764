import { BadInput } from "../../measures/bad-input.ts";
import type { Reading } from "../../studio/records/reading.ts";
import type { StudioStore } from "../../studio/records/store.ts";

/** Readings that arrive within so long of one another share a transaction, and the disk's one long breath. */
const GATHER_MS = 20;

/** One probe's readings for one firing. */
export interface ProbeReadings {
  readonly firingId: string;
  readonly probe: string;
  readonly readings: readonly Reading[];
}

interface Waiting extends ProbeReadings {
  readonly done: () => void;
  readonly failed: (error: unknown) => void;
}

type Listener = (kept: ProbeReadings) => void;

/**
 * Keeps readings, many senders' in one transaction. What it has acknowledged is on the disk; only then do those who
 * listen hear of it.
 */
export class ReadingKeeper {
  readonly #store: StudioStore;
  readonly #listeners = new Set<Listener>();
  #waiting: Waiting[] = [];
  #timer: NodeJS.Timeout | null = null;
  #keeping: Promise<void> = Promise.resolve();

  constructor(store: StudioStore) {
    this.#store = store;
  }

  /** @returns what ends the listening */
  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
    };
  }

  /**
   * Keeps readings; comes back when they are on the disk.
   *
   * @param gatherMs how long to wait for others to share the transaction; 0 for a sender of whom nothing else comes
   *   before this is answered
   * @throws BadInput where they cannot be kept; those of others that came at the same time are
   */
  keep(given: ProbeReadings, gatherMs = GATHER_MS): Promise<void> {
    return new Promise((done, failed) => {
      this.#waiting.push({ ...given, done, failed });
      this.#timer ??= setTimeout(() => this.#keepWaiting(), gatherMs);
    });
  }

  /** Keeps what still waits. */
  async close(): Promise<void> {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#keepWaiting();
    await this.#keeping;
  }

  #keepWaiting(): void {
    this.#timer = null;
    const waiting = this.#waiting;
    this.#waiting = [];
    if (waiting.length > 0) this.#keeping = this.#keeping.then(() => this.#keepAll(waiting));
  }

  async #keepAll(waiting: readonly Waiting[]): Promise<void> {
    const gathered = gather(waiting);
    try {
      await this.#store.write(async ({ readings: kept }) => {
        for (const { firingId, probe, readings } of gathered) await kept.add(firingId, probe, readings);
      });
    } catch (error) {
      // One that cannot be kept spoils no other's: each by itself, then.
      if (waiting.length > 1 && error instanceof BadInput) {
        for (const each of waiting) await this.#keepAll([each]);
      } else for (const { failed } of waiting) failed(error);
      return;
    }
    for (const { done } of waiting) done();
    for (const each of gathered) for (const listener of this.#listeners) listener(each);
  }
}

/** Each probe's readings in one list, in the order in which they came. */
function gather(waiting: readonly Waiting[]): ProbeReadings[] {
  const byProbe = Map.groupBy(waiting, ({ firingId, probe }) => `${firingId} ${probe}`);
  return [...byProbe.values()].map((all) => {
    const { firingId, probe } = all[0] as Waiting;
    return { firingId, probe, readings: all.flatMap(({ readings }) => readings) };
  });
}
