import { BadInput } from "../../measures/bad-input.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { levelAt, wholeTurn } from "./edit-pieces.ts";
import { closePlan, type Edited, openPlan } from "./open-plan.ts";

const SAME_MM = 0.5;
const SAME_DEG = 0.5;

/**
 * Lays a second half shelf beside one: its straight side along the other's, at the same height, on three posts of its own
 * that mirror the first one's. It is a level of its own, so that its height can be changed by itself.
 *
 * @throws BadInput where the level's shelf is not a half one
 */
export function addBeside(request: LoadRequest, plan: LoadPlan, level: number): Edited {
  const levels = openPlan(plan);
  const first = levelAt(levels, level);
  if (!isHalf(request, first.shelf)) {
    throw new BadInput({ code: "not-half", path: "shelf", found: first.shelf, expected: "a half shelf" });
  }
  levels.push({
    ...first,
    turnDeg: wholeTurn(first.turnDeg + 180),
    posts: first.posts.map((post) => ({
      ...post,
      xMm: 2 * first.xMm - post.xMm,
      yMm: 2 * first.yMm - post.yMm,
      turnDeg: wholeTurn(post.turnDeg + 180),
    })),
    pieces: [],
  });
  return closePlan(request, plan, levels);
}

/** Whether a half shelf lies at a level and its other half is not beside it. */
export function lacksOtherHalf(request: LoadRequest, plan: LoadPlan, level: number): boolean {
  const first = plan.levels[level];
  if (!first || !isHalf(request, first.shelf)) return false;
  return !plan.levels.some(
    (other) =>
      isHalf(request, other.shelf) &&
      Math.abs(other.topMm - first.topMm) < SAME_MM &&
      Math.abs(wholeTurn(other.turnDeg - first.turnDeg) - 180) < SAME_DEG,
  );
}

const isHalf = (request: LoadRequest, name: string): boolean =>
  request.furniture.shelves.some((shelf) => shelf.name === name && shelf.shape === "half-disc");
