import type { CommandAnswer, StudioEvent } from "../studio/api/contract.ts";
import { KIND_NAMES } from "../studio/records/record-kind.ts";

type Listener = (event: StudioEvent) => void;

/** Tells whoever listens what changed. */
export class StudioNews {
  readonly #listeners = new Set<Listener>();

  /** @returns what ends the listening */
  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
    };
  }

  /** A command was done, undone or redone. */
  changed({ entry, changed, settingsChanged }: CommandAnswer): void {
    const ids = Object.entries(changed).map(([kind, records]) => [kind, Object.keys(records ?? {})] as const);
    this.#tell({ entryId: entry.id, changed: Object.fromEntries(ids), settingsChanged });
  }

  /** The whole studio was replaced: every kind is named, without ids, and so is no entry. */
  replaced(): void {
    const changed = Object.fromEntries(KIND_NAMES.map((kind) => [kind, [] as string[]]));
    this.#tell({ entryId: "", changed, settingsChanged: true });
  }

  #tell(event: StudioEvent): void {
    for (const listener of this.#listeners) listener(event);
  }
}
