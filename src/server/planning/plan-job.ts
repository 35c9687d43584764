import type { PlanEvent } from "../../studio/api/contract.ts";

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

  better(event: Extract<PlanEvent, { kind: "better" }>): void {
    if (this.#end) return;
    this.#latest = event;
    this.#tell(event);
  }

  /** It is over. After this it says no more. */
  end(event: PlanEvent): void {
    if (this.#end) return;
    this.#end = event;
    this.#tell(event);
    this.#listeners.clear();
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

  #tell(event: PlanEvent): void {
    for (const listener of this.#listeners) listener(event);
  }
}
