import type { Broken } from "../checker/broken.ts";
import { type Clearance, clearancesIn } from "../checker/clearances.ts";
import { type PieceInPlace, type Scene, sceneOf } from "../checker/scene.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { PIECE_RULES } from "../rules/all-rules.ts";
import { wareSolid } from "../solids/ware-solid.ts";
import type { Spot } from "./edit-pieces.ts";
import { leastMoveMm } from "./least-move.ts";
import type { PiecePlace } from "./open-plan.ts";

/** What a piece breaks where it is held, and how near it is to the nearest thing of each kind. */
export interface LiveAnswer {
  readonly broken: readonly Broken[];
  readonly near: readonly Clearance[];
}

/** A piece taken up to be set down somewhere: everything else of the load stands still, set up once. */
export interface HeldPiece {
  /** True where turning it changes nothing: it has neither handle nor spout. */
  readonly isRound: boolean;
  /** What it would break there; as `checkPieceIn` would say of the plan with the piece there. */
  answer(spot: Spot, level: number): LiveAnswer;
  /** Whether it would break anything there: quicker, since it looks no further than the first. */
  mayStand(spot: Spot, level: number): boolean;
  /**
   * How far sideways it would have to be moved at least before it could keep every rule; zero where it keeps them,
   * infinite where no place on that level will do. Millimetres; more than `enoughMm` need not be told exactly.
   */
  shortMm(spot: Spot, level: number, enoughMm?: number): number;
  /** The middle of a level's shelf, and how far out from it a piece's axis may be; null where there is no such level. */
  ground(level: number): { readonly x: number; readonly y: number; readonly reachMm: number } | null;
}

/**
 * Takes a piece up: one of the plan, or one that waits. Asked on every move of a drag, so the scene is set up here, once.
 *
 * @param piece a place in the plan, or the name of a kind that waits
 * @returns null where there is no such piece
 */
export function holdPiece(
  request: LoadRequest,
  plan: LoadPlan,
  piece: PiecePlace | { readonly ware: string },
): HeldPiece | null {
  const scene = sceneOf(request, plan);
  const held =
    "ware" in piece
      ? null
      : (scene.pieces.find((each) => each.level === piece.level && each.placement === piece.placement) ?? null);
  const ware = "ware" in piece ? request.ware.find((each) => each.name === piece.ware) : held?.ware;
  if (!ware) return null;
  const others = scene.pieces.filter((each) => each !== held);
  const placementOn = (level: number): number =>
    held?.level === level ? held.placement : (plan.levels[level]?.placements.length ?? 0);
  const at = ({ xMm, yMm, turnDeg }: Spot, level: number): PieceInPlace | null => {
    const shelf = scene.shelves[level];
    if (!shelf) return null;
    const placement = placementOn(level);
    return {
      level,
      placement,
      ware,
      x: xMm,
      y: yMm,
      solid: wareSolid(ware, xMm, yMm, turnDeg, shelf.topMm),
      name: `${ware.name} (level ${level + 1}, piece ${placement + 1})`,
      thing: `${ware.name} ${placement + 1} on level ${level + 1}`,
      place: { kind: "piece", level, placement },
    };
  };
  return {
    isRound: !ware.handle && !ware.spout,
    answer: (spot, level) => {
      const standing = at(spot, level);
      if (!standing) return { broken: [], near: [] };
      return { broken: brokenBy(scene, standing, others), near: clearancesIn(scene, standing, others) };
    },
    mayStand: (spot, level) => {
      const standing = at(spot, level);
      return standing !== null && PIECE_RULES.every((rule) => rule.findForPiece(scene, standing, others).length === 0);
    },
    shortMm: (spot, level, enoughMm) => {
      const standing = at(spot, level);
      return standing ? leastMoveMm(scene, standing, others, enoughMm) : Number.POSITIVE_INFINITY;
    },
    ground: (level) => {
      const shelf = scene.shelves[level]?.solid;
      return shelf ? { x: shelf.x, y: shelf.y, reachMm: shelf.reachMm } : null;
    },
  };
}

const brokenBy = (scene: Scene, piece: PieceInPlace, others: readonly PieceInPlace[]): Broken[] =>
  PIECE_RULES.flatMap((rule) => rule.findForPiece(scene, piece, others));
