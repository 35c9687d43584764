import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { ALL_RULES, PIECE_RULES } from "../rules/all-rules.ts";
import type { Broken } from "./broken.ts";
import { type Scene, sceneOf } from "./scene.ts";

export type { Broken, Place } from "./broken.ts";

/**
 * Every rule a plan breaks, measured exactly in space between solids. It shares nothing with the search that made the
 * plan, so that neither can hide the other's mistake.
 *
 * @param request what there is and the clearances she keeps
 * @param plan where everything goes, its levels in any order
 * @returns nothing where every rule is kept; else each break with the things, the distance found and a sentence
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function checkPlan(request: LoadRequest, plan: LoadPlan): Broken[] {
  const scene = sceneOf(request, plan);
  return ALL_RULES.flatMap((rule) => rule.find(scene));
}

/**
 * What one piece breaks, for an editor while it is dragged: its shelf's edge, neighbours, posts, wall, shelves above,
 * lid, probes and open spyholes. What concerns a whole level or the counts (balance, stock) is checkPlan's.
 *
 * @param levelIndex the level's index in the plan, from 0
 * @param placementIndex the piece's index on that level, from 0
 * @returns nothing where the piece keeps every rule, or where there is no such piece
 */
export function checkPiece(request: LoadRequest, plan: LoadPlan, levelIndex: number, placementIndex: number): Broken[] {
  return checkPieceIn(sceneOf(request, plan), levelIndex, placementIndex);
}

/** The same in a scene set up already, for many questions about one plan. */
export function checkPieceIn(scene: Scene, levelIndex: number, placementIndex: number): Broken[] {
  const piece = scene.pieces.find((each) => each.level === levelIndex && each.placement === placementIndex);
  if (!piece) return [];
  const others = scene.pieces.filter((each) => each !== piece);
  return PIECE_RULES.flatMap((rule) => rule.findForPiece(scene, piece, others));
}
