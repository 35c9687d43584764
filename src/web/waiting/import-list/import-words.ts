import type { WareImport, WareImportRow } from "../../../studio/records/ware-csv/preview-ware-import.ts";
import { batches } from "../words/ware-words.ts";

/** How many rows of a list do what. */
export type ImportCounts = Readonly<Record<WareImportRow["what"], number>>;

export function importCounts({ rows }: Pick<WareImport, "rows">): ImportCounts {
  const counts = { new: 0, changed: 0, same: 0, refused: 0 };
  for (const { what } of rows) counts[what] += 1;
  return counts;
}

export const WHAT_WORDS: Readonly<Record<WareImportRow["what"], string>> = {
  new: "New",
  changed: "Changed",
  same: "As it was",
  refused: "Left out",
};

/** What the import will do, in a line: "3 new batches, 2 changed, 1 left out". */
export function importSummary(counts: ImportCounts): string {
  const parts = [
    counts.new > 0 ? `${counts.new} new ${counts.new === 1 ? "batch" : "batches"}` : "",
    counts.changed > 0 ? `${counts.changed} changed` : "",
    counts.same > 0 ? `${counts.same} as ${counts.same === 1 ? "it was" : "they were"}` : "",
    counts.refused > 0 ? `${counts.refused} left out` : "",
  ].filter(Boolean);
  return parts.length === 0 ? "The list has no rows." : `${parts.join(", ")}.`;
}

/** What the button that does it says. */
export const importPress = ({ new: added, changed }: ImportCounts): string =>
  changed === 0
    ? `Take in ${batches(added)}`
    : added === 0
      ? `Change ${batches(changed)}`
      : `Take in and change ${batches(added + changed)}`;
