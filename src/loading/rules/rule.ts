import type { Broken } from "../checker/broken.ts";
import type { PieceInPlace, Scene } from "../checker/scene.ts";
import type { ClearanceRules } from "../clearance-rules.ts";

/** One rule of loading. The checker only adds up what its rules find: a new rule is a new file and a line in the list. */
export interface Rule {
  /** Its name in the files, where she may set it: "gapMm". */
  readonly name: string;
  /** Why the trade keeps it, and where that is from. */
  readonly reason: string;
  /** The clearance she may set for it, where there is one. */
  readonly setting: keyof ClearanceRules | null;
  readonly defaultMm: number | null;
  /** Every place where a plan breaks it. */
  readonly find: (scene: Scene) => Broken[];
}

/** A rule about single pieces and what is near them, so that it can be asked of one piece while she drags it. */
export interface PieceRule extends Rule {
  /** What this piece breaks, against the given other pieces and all else in the kiln. */
  readonly findForPiece: (scene: Scene, piece: PieceInPlace, others: readonly PieceInPlace[]) => Broken[];
}

/** A piece rule asked of every piece; each pair of pieces is looked at once. */
export function pieceRule(rule: Omit<PieceRule, "find">): PieceRule {
  return {
    ...rule,
    find: (scene) => scene.pieces.flatMap((piece, i) => rule.findForPiece(scene, piece, scene.pieces.slice(i + 1))),
  };
}
