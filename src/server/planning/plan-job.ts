import type { PlanEvent } from "../../studio/api/contract.ts";

/** Between two plans told: often enough to look alive, seldom enough for a phone. */
const BETWEEN_MS = 200;

type Listener = (event: PlanEvent) => void;

/**
 * One wish to have a load planned: what it has said, and who listens. Whoever comes later hears the best so far, and how
 * it ended.
 */
export class PlanJob {
  readonly id: string;
  readonly loadId: string;
  readonly #listeners = new Set<Listener>();
  readonly #aborted = new AbortController();
  #latest: PlanEvent | null = null;
  #end: PlanEvent | null = null;
  #timer: NodeJS.Timeout | null = null;
  #toldAtMs = 0;

  constructor(id: string, loadId: string) {
    this.id = id;
    this.loadId = loadId;
  }

  get signal(): AbortSignal {
    return this.#aborted.signal;
  }

  get isOver(): boolean {
    return this.#end !== null;
  }

  /** Asks it to end with what it has. */
  stop(): void {
    this.#aborted.abort();
  }

  /** A better plan was found. Of several in quick succession the last is told. */
  better(event: Extract<PlanEvent, { kind: "better" }>): void {
    if (this.#end) return;
    this.#latest = event;
    const soonMs = this.#toldAtMs + BETWEEN_MS - performance.now();
    if (soonMs <= 0) this.#tellLatest();
    else this.#timer ??= setTimeout(() => this.#tellLatest(), soonMs);
  }

  /** It is over. After this it says no more. */
  end(event: PlanEvent): void {
    if (this.#end) return;
    if (this.#timer) this.#tellLatest();
    this.#end = event;
    this.#tell(event);
  }

  /** @returns what ends the listening */
  listen(listener: Listener): () => void {
    if (this.#latest) listener(this.#latest);
    if (this.#end) listener(this.#end);
    else this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
    };
  }

  #tellLatest(): void {
    if (this.#timer) clearTimeout(this.#timer);
    this.#timer = null;
    this.#toldAtMs = performance.now();
    if (this.#latest) this.#tell(this.#latest);
  }

  #tell(event: PlanEvent): void {
    for (const listener of this.#listeners) listener(event);
  }
}
