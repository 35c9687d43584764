import type { CommandAnswer, StudioEvent } from "../studio/api/contract.ts";
import type { StudioNotice } from "../studio/api/notices-contract.ts";
import { KIND_NAMES, type KindName } from "../studio/records/record-kind.ts";

/** Ids by kind. */
export type StudioIds = { readonly [Kind in KindName]: readonly string[] };

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

  /** The whole studio was replaced: names every record that was or is there, and no entry of the history. */
  replaced(...ids: readonly StudioIds[]): void {
    const changed = KIND_NAMES.map((kind) => [kind, [...new Set(ids.flatMap((each) => each[kind]))]] as const);
    this.#tell({ entryId: "", changed: Object.fromEntries(changed), settingsChanged: true });
  }

  /** Something is to be told to her. Nothing was changed by it. */
  noticed(notice: StudioNotice): void {
    this.#tell({ entryId: `notice-${notice.id}`, changed: {}, settingsChanged: false, notice });
  }

  #tell(event: StudioEvent): void {
    for (const listener of this.#listeners) listener(event);
  }
}
