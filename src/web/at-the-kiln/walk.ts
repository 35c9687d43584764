import type { Level } from "../../loading/load-plan.ts";
import type { LengthUnits } from "../../measures/length.ts";
import { formatLength } from "../../measures/length.ts";
import { loadingStages } from "../../sheets/loading-steps.ts";
import type { NumberedPiece, SheetLoad } from "../../sheets/sheet-load.ts";
import { placeKey } from "../../studio/loads/places.ts";
import { fingerprint } from "./fingerprint.ts";

/** Something to do that sets down no single piece: a shelf, posts, a look before going on. */
export interface DoStep {
  readonly kind: "do";
  readonly key: string;
  readonly stage: string;
  readonly level: number | null;
  readonly text: string;
  readonly note: string | null;
  readonly sets: "shelf" | "posts" | null;
  /** Everything is laid out and counted: the screen lists it. */
  readonly counts: boolean;
  /** Before anything goes in, while the kiln is built up, or before the lid comes down. */
  readonly when: "before" | "building" | "closing";
}

/** One piece to set down. */
export interface PieceStep {
  readonly kind: "piece";
  readonly key: string;
  readonly stage: string;
  readonly level: number;
  readonly placement: number;
  readonly piece: NumberedPiece;
  /** How many pieces the level has. */
  readonly of: number;
}

export type WalkStep = DoStep | PieceStep;

/**
 * The printed sheet's loading order, one thing a screen: its steps as they are, and each piece by itself.
 * A step's key stays the same for as long as what it is about stays the same, so that ticks hold over a change elsewhere.
 */
export function loadingWalk(load: SheetLoad, units: LengthUnits): WalkStep[] {
  const stages = loadingStages(load, units);
  const furniture = fingerprint(load.plan.levels.map(builtOf));
  return stages.flatMap(({ title, level, steps }, place): WalkStep[] => {
    const when = level !== null ? "building" : place === 0 ? "before" : "closing";
    const planned = level === null ? null : load.plan.levels[level];
    const built = planned ? fingerprint(builtOf(planned)) : furniture;
    const whole = planned ? fingerprint(planned) : when === "before" ? furniture : fingerprint(load.plan.levels);
    return steps.flatMap(({ text, note, sets, counts = false }, i): WalkStep[] => {
      if (sets === "pieces") return level === null ? [] : pieceSteps(load, level, title);
      // A shelf and its posts stand while pieces on them move; a look about the pieces has to be taken again.
      const about = sets ? `${sets}-${built}` : `${i}-${whole}`;
      const key = `${when}${level ?? ""}-${about}`;
      const said = counts ? text.replace("on the first page", "here") : text;
      return [
        { kind: "do", key, stage: title, level, text: said, note: note ?? null, sets: sets ?? null, counts, when },
      ];
    });
  });
}

function pieceSteps(load: SheetLoad, index: number, stage: string): PieceStep[] {
  const level = load.levels.find((each) => each.index === index);
  const pieces = level?.pieces ?? [];
  return pieces.map((piece) => {
    const { placement } = piece.piece;
    return {
      kind: "piece",
      key: placeKey({ level: index, placement }),
      stage,
      level: index,
      placement,
      piece,
      of: pieces.length,
    };
  });
}

const builtOf = ({ placements: _, ...built }: Level): Omit<Level, "placements"> => built;

/** As much of a plan as is compared. */
export interface PlanLevels {
  readonly levels: readonly Level[];
}

/** One mark for each level of a plan: another mark, another level. */
export const levelPrints = (plan: PlanLevels): string[] => plan.levels.map((level) => fingerprint(level));

/** Where a piece goes, as short lines to read at arm's length. */
export function pieceWords({ piece, direction, insideMm, handle, spout }: NumberedPiece, units: LengthUnits): string[] {
  const edge =
    insideMm >= 0
      ? `${formatLength(insideMm, units)} in from the shelf’s edge`
      : `${formatLength(-insideMm, units)} over the shelf’s edge`;
  return [
    direction === "the middle" ? "In the middle" : `Toward ${direction}, ${edge}`,
    ...(handle ? [`Handle to ${handle}`] : []),
    ...(spout ? [`Spout to ${spout}`] : []),
    ...(piece.ware.cookie ? ["On its cookie"] : []),
  ];
}
