import { pieceBecomes } from "../../../studio/firings/piece-becomes.ts";
import { standingPieces } from "../../../studio/queries/promised.ts";
import type { Becomes } from "../../../studio/records/becomes.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

/** What a batch's pieces became, as the choice says it. */
export const BECAME_WORDS: Readonly<Record<Becomes, string>> = {
  bisque: "Bisqued: to be glazed next",
  finished: "Finished",
  second: "Finished, as seconds",
  again: "To be fired again",
  lost: "Lost: cracked or stuck",
};

/** The pieces of one batch that came out of the kiln. */
export interface UnpackedBatch {
  readonly batch: WareRecord;
  readonly count: number;
  /** What they most likely became. */
  readonly likely: Becomes;
}

/** Which pieces of which batches came out, most first. Batches taken out since are left out. */
export function unpackedBatches(load: LoadRecord, ware: readonly WareRecord[]): UnpackedBatch[] {
  const batches = new Map(ware.map((batch) => [batch.id, batch]));
  return [...standingPieces(load)]
    .flatMap(([id, standing]) => {
      const batch = batches.get(id);
      const count = Math.min(standing, batch?.ware.count ?? 0);
      return batch && count > 0 ? [{ batch, count, likely: pieceBecomes({ grade: "good", ...batch }) }] : [];
    })
    .sort((a, b) => b.count - a.count);
}

/** What the studio is told: each batch with what she said it became, else with what stood there as likely. */
export const toldBatches = (
  out: readonly UnpackedBatch[],
  said: Readonly<Record<string, Becomes>>,
): { readonly wareId: string; readonly becomes: Becomes }[] =>
  out.map(({ batch: { id }, likely }) => ({ wareId: id, becomes: said[id] ?? likely }));
