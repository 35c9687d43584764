import type { PieceMove } from "../../../loading/editing/open-plan.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import { carried, followPieces } from "../../../studio/loads/places.ts";
import type { LoadRecord, Pin } from "../../../studio/records/load-record.ts";

/** One thing she did to a load. */
export interface LoadEdit {
  /** What was done, in words, for undo: "moved the tall vase". */
  readonly note: string;
  /** The plan it came to; left out where it stays. */
  readonly plan?: LoadPlan;
  /** Where each piece of the plan before stands in the new one. */
  readonly moves?: readonly PieceMove[];
  readonly pins?: readonly Pin[];
}

/**
 * The load once the studio has done an edit, known before it answers: pins and ticks follow the pieces by the studio's
 * own rule, and the version is one more.
 */
export function afterEdit(load: LoadRecord, { plan, moves, pins }: LoadEdit): LoadRecord {
  const follows = plan === undefined ? {} : carried(load, followPieces(load.plan, plan as never, moves));
  return {
    ...load,
    ...follows,
    ...(plan === undefined ? {} : { plan: plan as unknown as LoadRecord["plan"] }),
    ...(pins === undefined ? {} : { pins: [...pins] }),
    version: load.version + 1,
  };
}

/** What is sent for an edit made on a load. */
export const changeLoadInput = ({ id, version }: LoadRecord, { note, plan, moves, pins }: LoadEdit): object => ({
  id,
  version,
  note,
  ...(plan === undefined ? {} : { plan }),
  ...(moves === undefined ? {} : { moves }),
  ...(pins === undefined ? {} : { pins }),
});
