import type { Programme } from "../../firing/programme/programme.ts";
import type { Grade } from "../records/faults.ts";
import type { WareRecord, WareStage } from "../records/ware-record.ts";

/** What a piece becomes in the fire: to be glazed next, finished, finished but a second, to be fired again as it is, lost. */
export const BECOMES = ["bisque", "finished", "second", "again", "lost"] as const;
export type Becomes = (typeof BECOMES)[number];

/** What a piece most likely became. She may say otherwise, piece by piece. */
export function pieceBecomes(piece: {
  readonly grade: Grade;
  readonly stage: WareStage;
  readonly firingKind: WareRecord["firingKind"];
  /** What was fired, where the programme says. */
  readonly kind?: Programme["kind"];
}): Becomes {
  const { grade, stage, firingKind, kind } = piece;
  if (grade === "lost") return "lost";
  const isBisqued = stage === "greenware" && firingKind !== "once-fired" && (kind ?? "bisque") === "bisque";
  if (isBisqued) return "bisque";
  return grade === "second" ? "second" : "finished";
}

/** The batch that pieces become: its stage, and what it waits for. A cone was that of the firing it has had. */
export function becomeBatch(batch: WareRecord, becomes: "bisque" | "finished" | "second", count: number): WareRecord {
  const { cone: _, mustFire, ...ware } = batch.ware;
  if (becomes === "bisque") {
    const must = mustFire === undefined ? {} : { mustFire };
    return { ...batch, ware: { ...ware, ...must, count }, stage: "bisque", firingKind: "glaze" };
  }
  const finished = { ...batch, ware: { ...batch.ware, mustFire: false, count }, stage: "finished" as const };
  const ownerNote = becomes === "second" ? ["seconds", batch.ownerNote].filter(Boolean).join("; ") : batch.ownerNote;
  if (mustFire === undefined) delete (finished.ware as { mustFire?: boolean }).mustFire;
  return { ...finished, firingKind: null, ownerNote: ownerNote.slice(0, 2000) };
}
