import type { Level, LoadPlan, PlacedPost, Placement } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";

/** A place in a plan: which level, which of its placements; both from 0. */
export interface PiecePlace {
  readonly level: number;
  readonly placement: number;
}

/** A piece that is there before and after, and its place in each. */
export interface PieceMove {
  readonly from: PiecePlace;
  readonly to: PiecePlace;
}

/** A plan after something was done to it. The plan it was made from is as it was. */
export interface Edited {
  readonly plan: LoadPlan;
  /** Every piece that is in both, so that pins and ticks can follow. */
  readonly moves: readonly PieceMove[];
}

/** A piece of an open plan, and where it came from; null for one put in now. */
export interface OpenPiece {
  placement: Placement;
  readonly from: PiecePlace | null;
}

/** A level of an open plan: like a plan's, but its own to change. */
export interface OpenLevel extends Omit<Level, "placements" | "posts"> {
  shelf: string;
  topMm: number;
  xMm: number;
  yMm: number;
  turnDeg: number;
  posts: PlacedPost[];
  pieces: OpenPiece[];
}

/** A plan's levels laid open to be changed; `closePlan` makes a plan of them again. */
export function openPlan(plan: LoadPlan): OpenLevel[] {
  return plan.levels.map(({ placements, posts, ...level }, index) => ({
    ...level,
    posts: [...posts],
    pieces: placements.map((placement, i) => ({ placement, from: { level: index, placement: i } })),
  }));
}

/** Why a piece is left out that she took out herself. */
export const TAKEN_OUT = "taken out by hand";

/**
 * Makes a plan of open levels: levels from the floor up, what is left counted anew, and the planner's figures let go,
 * since they were of another plan; its bound stays as long as shelves and posts do, for it knows no others.
 *
 * @param request what waits, to count what is left
 * @param before the plan it was opened from, for the reasons of what stayed out already
 */
export function closePlan(request: LoadRequest, before: LoadPlan, levels: readonly OpenLevel[]): Edited {
  const upward = [...levels].sort((a, b) => a.topMm - b.topMm);
  const moves: PieceMove[] = [];
  upward.forEach(({ pieces }, level) => {
    pieces.forEach(({ from }, placement) => {
      if (from) moves.push({ from, to: { level, placement } });
    });
  });
  const plan: LoadPlan = {
    format: before.format,
    levels: upward.map(({ pieces, ...level }) => ({ ...level, placements: pieces.map(({ placement }) => placement) })),
    left: [],
    figures: {},
  };
  return { plan: { ...plan, left: leftOf(request, before, plan), figures: figuresOf(request, before, plan) }, moves };
}

/** What of the request stands nowhere in a plan, by kind. */
export function waitingCounts(request: LoadRequest, plan: LoadPlan): Map<string, number> {
  const counts = new Map(request.ware.map(({ name, count }) => [name, count]));
  for (const { placements } of plan.levels)
    for (const { ware } of placements) counts.set(ware, (counts.get(ware) ?? 0) - 1);
  return counts;
}

function leftOf(request: LoadRequest, before: LoadPlan, plan: LoadPlan): LoadPlan["left"] {
  const reasons = new Map(before.left.map((each) => [each.ware, each]));
  return [...waitingCounts(request, plan)].flatMap(([ware, count]) => {
    if (count <= 0) return [];
    const known = reasons.get(ware);
    return [{ ware, count, reason: known && known.count >= count ? known.reason : TAKEN_OUT }];
  });
}

/** What can be said of any plan; of the planner's own figures only its bound, as long as it holds. */
function figuresOf(request: LoadRequest, before: LoadPlan, plan: LoadPlan): LoadPlan["figures"] {
  const values = new Map(request.ware.map(({ name, value }) => [name, value]));
  const placed = plan.levels.flatMap(({ placements }) => placements);
  return {
    value: placed.reduce((sum, { ware }) => sum + (values.get(ware) ?? 0), 0),
    pieces: placed.length,
    waiting: request.ware.reduce((sum, { count }) => sum + count, 0),
    ...(before.figures.valueBound !== undefined && furnitureOf(before) === furnitureOf(plan)
      ? { valueBound: before.figures.valueBound }
      : {}),
  };
}

/** Shelves and posts as one text, whatever order their fields came in. */
const furnitureOf = ({ levels }: LoadPlan): string =>
  JSON.stringify(
    levels.map(({ shelf, topMm, xMm, yMm, turnDeg, posts }) => [
      ...[shelf, topMm, xMm, yMm, turnDeg],
      posts.map((post) => [post.xMm, post.yMm, post.turnDeg, post.heightsMm]),
    ]),
  );
