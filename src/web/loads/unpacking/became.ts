import { standingPieces } from "../../../studio/queries/promised.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord, WareStage } from "../../../studio/records/ware-record.ts";

/** What pieces became in the fire. */
export const BECAME = ["bisque", "finished", "again", "lost"] as const;
export type Became = (typeof BECAME)[number];

export const BECAME_WORDS: Readonly<Record<Became, string>> = {
  bisque: "Bisqued: to be glazed next",
  finished: "Finished",
  again: "To be fired again",
  lost: "Lost: cracked or stuck",
};

/** The pieces of one batch that came out of the kiln. */
export interface UnpackedBatch {
  readonly batch: WareRecord;
  readonly count: number;
  /** What they most likely became. */
  readonly likely: Became;
}

/** Which pieces of which batches came out, most first. Batches taken out since are left out. */
export function unpackedBatches(load: LoadRecord, ware: readonly WareRecord[]): UnpackedBatch[] {
  const batches = new Map(ware.map((batch) => [batch.id, batch]));
  return [...standingPieces(load)]
    .flatMap(([id, standing]) => {
      const batch = batches.get(id);
      const count = Math.min(standing, batch?.ware.count ?? 0);
      return batch && count > 0 ? [{ batch, count, likely: likely(batch) }] : [];
    })
    .sort((a, b) => b.count - a.count);
}

const likely = ({ firingKind }: WareRecord): Became => (firingKind === "bisque" ? "bisque" : "finished");

/** A command for the studio. */
export interface GivenCommand {
  readonly name: string;
  readonly input: Readonly<Record<string, unknown>>;
}

type NewWare = Omit<WareRecord, "createdAt" | "changedAt">;

/**
 * The commands that write down what a batch's pieces became. Where only some of the batch were in the kiln, those become a
 * batch of their own and the rest waits on.
 *
 * @param newId a new id for a batch split off
 */
export function becameCommands({ batch, count }: UnpackedBatch, became: Became, newId: () => string): GivenCommand[] {
  if (became === "again") return [];
  const rest = batch.ware.count - count;
  const change = changeFor(became);
  if (rest === 0) {
    return change === null
      ? [{ name: "remove-ware", input: { ids: [batch.id] } }]
      : [{ name: "change-ware", input: { ids: [batch.id], change } }];
  }
  const smaller = { name: "change-ware", input: { ids: [batch.id], change: { ware: { count: rest } } } };
  if (change === null) return [smaller];
  const { createdAt: _made, changedAt: _changed, ...kept } = batch;
  const split: NewWare = { ...kept, ...change, id: newId(), ware: { ...batch.ware, count } };
  return [smaller, { name: "add-ware", input: { ware: [split] } }];
}

function changeFor(
  became: Exclude<Became, "again">,
): { stage: WareStage; firingKind: WareRecord["firingKind"] } | null {
  if (became === "bisque") return { stage: "bisque", firingKind: "glaze" };
  return became === "finished" ? { stage: "finished", firingKind: null } : null;
}
