import { notifyManager, QueryClient } from "@tanstack/react-query";
import type { Changed } from "../../studio/api/contract.ts";
import type { RecordOf } from "../../studio/records/all-kinds.ts";
import type { KindName } from "../../studio/records/record-kind.ts";
import type { StudioSettings } from "../../studio/records/studio-settings.ts";
import { StudioRefusal } from "./client.ts";
import { type Kept, listAfter } from "./list-after.ts";

// Told in the same breath as whatever else tells of a change: when a planning is over and its plan is kept, neither the old
// load nor an empty one shows for a moment.
notifyManager.setScheduler(queueMicrotask);

/** Every record this page has read, by kind. The studio tells of changes, so nothing goes stale by itself. */
export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      gcTime: Number.POSITIVE_INFINITY,
      // The studio may run on this very machine: whether there is a network says nothing.
      networkMode: "always",
      refetchOnWindowFocus: false,
      retry: (failures, error) => !(error instanceof StudioRefusal) && failures < 2,
    },
    mutations: { networkMode: "always" },
  },
});

/** `Changed`, where which kind holds what does not matter. */
export type AnyChanged = { readonly [kind: string]: Readonly<Record<string, Kept | null>> };

/** Shows records that were put in, changed or taken out, on every screen of this page. Kinds not read yet are left. */
export function showChanged(changed: Changed | AnyChanged): void {
  for (const [kind, records] of Object.entries(changed as AnyChanged)) {
    // The settings are one, not a list; only a cache's own `settings` speaks of them here.
    if (kind === "settings") queries.setQueryData([kind], records.settings);
    else queries.setQueryData<readonly Kept[]>([kind], (list) => list && listAfter(list, records));
  }
}

/** The record as this page knows it. */
export const known = <Kind extends KindName>(kind: Kind, id: string): RecordOf[Kind] | undefined =>
  queries.getQueryData<readonly RecordOf[Kind][]>([kind])?.find((record) => record.id === id);

/** What a screen shows before the studio has answered. */
export interface StudioCache {
  readonly known: typeof known;
  /** Puts a record in, or another in its place. */
  readonly put: <Kind extends KindName>(kind: Kind, record: RecordOf[Kind]) => void;
  /** Changes a record that is there. */
  readonly patch: <Kind extends KindName>(
    kind: Kind,
    id: string,
    change: (record: RecordOf[Kind]) => RecordOf[Kind],
  ) => void;
  readonly remove: (kind: KindName, id: string) => void;
  readonly settings: (change: Partial<StudioSettings>) => void;
}

/**
 * A cache whose changes show at once.
 *
 * @param noteBefore told of each record as it was (null: it was not there), before it is shown changed
 */
export function studioCache(
  noteBefore: (kind: KindName | "settings", id: string, before: unknown) => void = () => {},
): StudioCache {
  const show = (kind: KindName, id: string, record: unknown) => {
    noteBefore(kind, id, known(kind, id) ?? null);
    showChanged({ [kind]: { [id]: record } } as Changed);
  };
  return {
    known,
    put: (kind, record) => show(kind, record.id, record),
    patch: (kind, id, change) => {
      const record = known(kind, id);
      if (record) show(kind, id, change(record));
    },
    remove: (kind, id) => show(kind, id, null),
    settings: (change) => {
      const settings = queries.getQueryData<StudioSettings>(["settings"]);
      if (!settings) return;
      noteBefore("settings", "settings", settings);
      queries.setQueryData(["settings"], { ...settings, ...change });
    },
  };
}
