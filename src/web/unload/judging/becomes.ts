import type { Programme } from "../../../firing/programme/programme.ts";
import { type Becomes, pieceBecomes } from "../../../studio/firings/piece-becomes.ts";
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

type Kind = Programme["kind"];

/** What a piece most likely becomes; of a batch that is gone since, as if it had been glazed. */
export function likelyBecomes(grade: Grade, batch: WareRecord | null, kind: Kind): Becomes {
  const { stage = "glazed", firingKind = null } = batch ?? {};
  return pieceBecomes({ grade, stage, firingKind, ...(kind === undefined ? {} : { kind }) });
}

/** What a piece of this grade may become, the likeliest first. */
export function mayBecome(grade: Grade, batch: WareRecord | null, kind: Kind): Becomes[] {
  const likely = likelyBecomes(grade, batch, kind);
  // Raw clay may be meant to stay bare; what is good for nothing may still be worth another firing.
  const unglazed: Becomes[] = likely === "bisque" ? [grade === "second" ? "second" : "finished"] : [];
  return [likely, ...unglazed, "again"];
}

/** What she said a piece becomes where that may still be, else what is likely. */
export function becomesOf(said: Becomes | undefined, grade: Grade, batch: WareRecord | null, kind: Kind): Becomes {
  const may = mayBecome(grade, batch, kind);
  return said !== undefined && may.includes(said) ? said : (may[0] as Becomes);
}
