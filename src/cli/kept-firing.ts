import { BadInput, shown } from "../measures/bad-input.ts";
import type { FiringRecord } from "../studio/records/firing-record.ts";
import type { StudioRecords } from "../studio/records/store.ts";

/** The firing of that id, else the newest of that name. @throws BadInput where there is none */
export async function keptFiring(records: StudioRecords, wanted: string | undefined): Promise<FiringRecord> {
  const all = await records.firings.list();
  const found = all.find(({ id }) => id === wanted) ?? all.findLast(({ name }) => name === wanted);
  if (found) return found;
  throw new BadInput({
    code: "unknown-record",
    path: "FIRING",
    found: wanted === undefined ? "nothing" : shown(wanted),
    expected: "a firing's id or name, as `wareboard firings --json` lists them",
  });
}
