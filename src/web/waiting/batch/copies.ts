import type { WareRecord } from "../../../studio/records/ware-record.ts";
import type { NewBatch } from "./batch-draft.ts";
import { freeName } from "./name-suggestion.ts";

/** The same batches once more, each under a name of its own. */
export function copiesOf(records: readonly WareRecord[], taken: ReadonlySet<string>): NewBatch[] {
  const names = new Set(taken);
  return records.map(({ ware, stage, firingKind, dueOn, ownerNote, clayBodyId, glazeId }) => {
    // "Mug 85 × 95, 2" copied is "Mug 85 × 95, 3".
    const name = freeName(ware.name.replace(/, \d+$/, ""), names);
    names.add(name);
    return { ware: { ...ware, name }, stage, firingKind, dueOn, ownerNote, clayBodyId, glazeId };
  });
}
