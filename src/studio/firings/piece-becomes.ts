import type { Programme } from "../../firing/programme/programme.ts";
import type { Becomes } from "../records/becomes.ts";
import type { Grade } from "../records/faults.ts";
import type { WareRecord, WareStage } from "../records/ware-record.ts";

/** A piece out of the fire. */
export interface PieceFired {
  readonly grade: Grade;
  readonly stage: WareStage;
  readonly firingKind: WareRecord["firingKind"];
  /** What was fired, where the programme says. */
  readonly kind?: Programme["kind"];
}

/** What a piece most likely became. She may say otherwise, piece by piece. */
export function pieceBecomes(piece: PieceFired): Becomes {
  const { grade, stage, firingKind, kind } = piece;
  if (grade === "lost") return "lost";
  const isBisqued = stage === "greenware" && firingKind !== "once-fired" && (kind ?? "bisque") === "bisque";
  if (isBisqued) return "bisque";
  return grade === "second" ? "second" : "finished";
}

/** What a piece may become, the likeliest first. */
export function mayBecome(piece: PieceFired): Becomes[] {
  const likely = pieceBecomes(piece);
  // Raw clay may be meant to stay bare; what is good for nothing may still be worth another firing.
  const unglazed: Becomes[] = likely === "bisque" ? [piece.grade === "second" ? "second" : "finished"] : [];
  return [likely, ...unglazed, "again"];
}

/** What she said a piece becomes where that may still be, else what is likely. */
export function becomesOf(said: Becomes | undefined, piece: PieceFired): Becomes {
  return said !== undefined && mayBecome(piece).includes(said) ? said : pieceBecomes(piece);
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
