import type { Changed, HistoryEntry } from "../api/contract.ts";
import type { HistoryCard, KeptEntry } from "../records/history.ts";
import type { KindName } from "../records/record-kind.ts";
import type { RecordSet, StudioRecords } from "../records/store.ts";

/** An entry as the browser is told it. */
export const entryOf = ({ id, at, scope, command, summary, standing }: HistoryCard): HistoryEntry => ({
  id,
  at,
  scope,
  command,
  summary,
  undone: standing === "undone" || standing === "left behind",
});

/** The records an entry is about, as they are now. */
export async function asTheyAre(records: StudioRecords, { changes }: KeptEntry): Promise<Changed> {
  const changed: Partial<Record<KindName, Record<string, unknown>>> = {};
  for (const { kind, id } of changes) {
    const set = records[kind] as Pick<RecordSet<unknown>, "get">;
    changed[kind] = { ...changed[kind], [id]: await set.get(id) };
  }
  return changed as Changed;
}
