import type { GlazeRecord } from "../../../studio/records/clay-and-glaze-records.ts";
import type { WareRecord, WareStage } from "../../../studio/records/ware-record.ts";
import type { WareChange } from "./batch-change.ts";

/** Stages a batch can be moved on to, in order. */
export const NEXT_STAGES = ["bisque", "glazed", "finished"] as const satisfies readonly WareStage[];
export type NextStage = (typeof NEXT_STAGES)[number];

/** What a press on it says, and what is said once it is done. */
export const NEXT_STAGE_WORDS: Readonly<Record<NextStage, { readonly press: string; readonly done: string }>> = {
  bisque: { press: "Bisqued", done: "bisqued" },
  glazed: { press: "Glazed", done: "glazed" },
  finished: { press: "Finished", done: "finished" },
};

/**
 * What changes when a batch has come to a stage. Bisqued and glazed ware waits for its glaze firing; finished ware for
 * nothing. The cone of the bisque firing says nothing of the next: its recorded glaze's does, where that is one cone.
 */
export function onReaching(stage: NextStage, record: WareRecord, glaze: GlazeRecord | undefined): WareChange {
  if (stage === "finished") return { stage, firingKind: null };
  const firingKind = record.firingKind === "lustre" ? "lustre" : "glaze";
  const wasForBisque = record.firingKind === "bisque" || record.firingKind === null;
  if (!wasForBisque) return { stage, firingKind };
  const cones = glaze?.cones ?? null;
  const only = cones && cones.coolest === cones.hottest ? cones.coolest : null;
  return { stage, firingKind, ware: { cone: only } };
}

/** The same for many batches: those that change alike together. */
export function eachOnReaching(
  stage: NextStage,
  records: readonly WareRecord[],
  glazes: readonly GlazeRecord[],
): { ids: string[]; change: WareChange }[] {
  const alike = new Map<string, { ids: string[]; change: WareChange }>();
  for (const record of records) {
    const change = onReaching(
      stage,
      record,
      glazes.find(({ id }) => id === record.glazeId),
    );
    const key = JSON.stringify(change);
    const others = alike.get(key) ?? { ids: [], change };
    others.ids.push(record.id);
    alike.set(key, others);
  }
  return [...alike.values()];
}
