import { BadInput } from "../../../measures/bad-input.ts";
import { recordPath, unknownRecord } from "../refusals.ts";
import type { StudioRecords } from "../store.ts";
import { WARE, type WareRecord } from "../ware-record.ts";
import type { WareImport } from "./preview-ware-import.ts";

/**
 * Does what the preview said; rows that were refused, and those that change nothing, are left out.
 *
 * @throws BadInput where a batch was changed since the preview was made; then nothing should be kept
 */
export async function applyWareImport(records: StudioRecords, { rows }: WareImport): Promise<void> {
  const added: WareRecord[] = [];
  for (const { what, before, after } of rows) {
    if (after === null || what === "same") continue;
    if (before === null) {
      added.push(after);
      continue;
    }
    const kept = await records.ware.get(before.id);
    if (kept === null) throw unknownRecord(WARE, before.id);
    if (JSON.stringify(kept) !== JSON.stringify(before)) throw changedMeanwhile(before.id, kept.changedAt);
    await records.ware.change(after);
  }
  await records.ware.add(...added);
}

const changedMeanwhile = (id: string, changedAt: string): BadInput =>
  new BadInput({
    code: "changed-since",
    path: recordPath(WARE, id),
    found: `a change made at ${changedAt}, after the preview`,
    expected: "the ware as it was then; look at the preview again",
  });
