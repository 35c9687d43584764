import { edgeDistanceMm } from "../../kiln/convex-region.ts";
import type { PieceKind } from "../packing/piece-kind.ts";
import { shelfClearsProbe } from "./columns.ts";
import { drawPosts, type StackHeight } from "./post-stacks.ts";
import type { LoadTask } from "./task.ts";

/** The narrowest a piece can be made to lie: its disc, or its disc and the arm that reaches furthest beyond it. */
export function acrossMm(piece: PieceKind): number {
  const beyond = piece.arms.map((arm) => Math.max(0, arm.length + arm.radius - piece.radius));
  return 2 * piece.radius + Math.max(0, ...beyond);
}

/** The widest any shelf that can lie in the kiln is, along any direction. */
export function widestShelfMm(task: LoadTask): number {
  let widest = 0;
  for (const seat of task.seats) {
    for (let angle = 0; angle < 180; angle += 1) {
      widest = Math.max(widest, edgeDistanceMm(seat.region, angle) + edgeDistanceMm(seat.region, angle + 180));
    }
  }
  return widest;
}

/** The tallest piece that could stand in this kiln on one shelf: with posts of any height, and with hers. */
export function tallestPossibleMm(
  task: LoadTask,
  heights: readonly StackHeight[],
): { anyPostsMm: number; withStockMm: number } {
  const { rules, kiln } = task.request;
  const room = kiln.chamber.depthMm - rules.lidMm;
  let anyPostsMm = Number.NEGATIVE_INFINITY;
  let withStockMm = Number.NEGATIVE_INFINITY;
  for (const seat of task.seats) {
    anyPostsMm = Math.max(anyPostsMm, room - rules.floorAirMm - seat.shelf.thicknessMm);
    for (const height of heights) {
      if (height.totalMm < rules.floorAirMm || !threeOf(task, height)) continue;
      const top = height.totalMm + seat.shelf.thicknessMm;
      if (!task.probes.every((probe) => shelfClearsProbe(seat.region, height.totalMm, top, probe, rules.probeMm)))
        continue;
      withStockMm = Math.max(withStockMm, room - top);
    }
  }
  return { anyPostsMm, withStockMm };
}

const threeOf = (task: LoadTask, height: StackHeight): boolean =>
  drawPosts(
    Int32Array.from(task.posts, (post) => post.count),
    [height],
  ) !== null;
