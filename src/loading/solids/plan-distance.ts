import type { ConvexRegion } from "../../kiln/convex-region.ts";
import { farthestMm, type PlanShape, reachAlong } from "./plan-shape.ts";

/**
 * How far apart two convex shapes stand, seen from above; below zero, how far they would have to move to come apart.
 *
 * Along any direction the gap between their shadows is at most that distance, and along one direction it equals it
 * (the separating axis theorem; from memory: Ericson, Real-Time Collision Detection, 2005, §5.2). That direction is
 * square to a straight side, or joins two corners, a corner and an arc's middle, or two arcs' middles: all are tried,
 * so the answer is exact.
 *
 * @returns millimetres
 */
export function planDistanceMm(a: PlanShape, b: PlanShape): number {
  const aPoint = a.corners[0];
  const bPoint = b.corners[0];
  // Two points: most pairs of pieces.
  if (aPoint && bPoint && a.corners.length === 1 && b.corners.length === 1 && !a.arc && !b.arc) {
    return Math.hypot(bPoint[0] - aPoint[0], bPoint[1] - aPoint[1]);
  }
  let best = Number.NEGATIVE_INFINITY;
  const tryAlong = (nx: number, ny: number): void => {
    best = Math.max(best, -reachAlong(b, -nx, -ny) - reachAlong(a, nx, ny));
  };
  for (const [nx, ny] of a.normals) tryAlong(nx, ny);
  for (const [nx, ny] of b.normals) tryAlong(-nx, -ny);
  const tryToward = (fromX: number, fromY: number, x: number, y: number): void => {
    const length = Math.hypot(x - fromX, y - fromY);
    if (length > 1e-12) tryAlong((x - fromX) / length, (y - fromY) / length);
  };
  const aimAt = (x: number, y: number): void => {
    for (const [fromX, fromY] of a.corners) tryToward(fromX, fromY, x, y);
    if (a.arc) tryToward(a.arc.x, a.arc.y, x, y);
  };
  for (const [x, y] of b.corners) aimAt(x, y);
  if (b.arc) aimAt(b.arc.x, b.arc.y);
  return best;
}

/**
 * How far inside a region a shape swollen by `radiusMm` lies: its least distance from the region's edge; below zero,
 * how far it passes the edge. Exact.
 *
 * @returns millimetres
 */
export function marginInsideMm(shape: PlanShape, radiusMm: number, region: ConvexRegion): number {
  let least = Number.POSITIVE_INFINITY;
  for (const side of region.sides) least = Math.min(least, side.offset - reachAlong(shape, side.nx, side.ny));
  const circle = region.circle;
  if (circle) least = Math.min(least, circle.radius - farthestMm(shape, circle.x, circle.y));
  return least - radiusMm;
}
