import type { Programme } from "../../../firing/programme/programme.ts";
import type { PieceFired } from "../../../studio/firings/piece-becomes.ts";
import type { Becomes } from "../../../studio/records/becomes.ts";
import type { Grade } from "../../../studio/records/faults.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

/** What pieces become, as a button says it. */
export const BECOMES_WORDS: Readonly<Record<Becomes, string>> = {
  bisque: "To be glazed",
  finished: "Finished",
  second: "Finished, a second",
  again: "Fire it again",
  lost: "Gone",
};

/** A piece as the studio asks what it becomes; of a batch that is gone since, as if it had been glazed. */
export function pieceFired(grade: Grade, batch: WareRecord | null, kind: Programme["kind"]): PieceFired {
  const { stage = "glazed", firingKind = null } = batch ?? {};
  return { grade, stage, firingKind, ...(kind === undefined ? {} : { kind }) };
}
