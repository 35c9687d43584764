import type { ConvexRegion, Side } from "../../kiln/convex-region.ts";

export type PlanPoint = readonly [x: number, y: number];

/**
 * A convex shape seen from above: a point, a straight line, or a region with straight sides and at most one arc.
 * A disc is not one of these: it is a point that an upright solid swells by its radius.
 */
export interface PlanShape {
  readonly corners: readonly PlanPoint[];
  /** Outward directions of the straight sides, length one. */
  readonly normals: readonly PlanPoint[];
  /** Where part of the edge is an arc: its circle, and the sides that cut the circle down to the arc. */
  readonly arc: {
    readonly x: number;
    readonly y: number;
    readonly radius: number;
    readonly sides: readonly Side[];
  } | null;
}

const SAME_PLACE_MM = 1e-9;

/** A single point. */
export function pointShape(x: number, y: number): PlanShape {
  return { corners: [[x, y]], normals: [], arc: null };
}

/** A straight line from one point to another; a point where they are the same. Millimetres. */
export function lineShape(x1: number, y1: number, x2: number, y2: number): PlanShape {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < SAME_PLACE_MM) return pointShape(x1, y1);
  const nx = (y2 - y1) / length;
  const ny = (x1 - x2) / length;
  return {
    corners: [
      [x1, y1],
      [x2, y2],
    ],
    normals: [
      [nx, ny],
      [-nx, -ny],
    ],
    arc: null,
  };
}

/** A region with at least one straight side, as a shape: its corners are where two of its borders meet. */
export function regionShape(region: ConvexRegion): PlanShape {
  const corners: PlanPoint[] = [];
  const keep = (x: number, y: number): void => {
    if (region.circle && Math.hypot(x - region.circle.x, y - region.circle.y) > region.circle.radius + SAME_PLACE_MM)
      return;
    if (region.sides.some((side) => side.nx * x + side.ny * y > side.offset + SAME_PLACE_MM)) return;
    if (corners.some(([px, py]) => Math.hypot(px - x, py - y) < SAME_PLACE_MM)) return;
    corners.push([x, y]);
  };
  region.sides.forEach((side, i) => {
    for (const other of region.sides.slice(i + 1)) {
      const cross = side.nx * other.ny - side.ny * other.nx;
      if (Math.abs(cross) < 1e-12) continue;
      keep(
        (side.offset * other.ny - other.offset * side.ny) / cross,
        (side.nx * other.offset - other.nx * side.offset) / cross,
      );
    }
    if (region.circle) {
      const { x, y, radius } = region.circle;
      const toSide = side.offset - side.nx * x - side.ny * y;
      const half = Math.sqrt(Math.max(0, radius * radius - toSide * toSide));
      if (Math.abs(toSide) > radius) return;
      for (const along of [half, -half]) {
        keep(x + side.nx * toSide - side.ny * along, y + side.ny * toSide + side.nx * along);
      }
    }
  });
  const arc = region.circle && { ...region.circle, sides: region.sides };
  return { corners, normals: region.sides.map((side) => [side.nx, side.ny]), arc };
}

/** How far the shape reaches along a direction of length one: the greatest nx·x + ny·y in it. Exact. */
export function reachAlong(shape: PlanShape, nx: number, ny: number): number {
  const arc = shape.arc;
  if (arc && onArc(arc, arc.x + arc.radius * nx, arc.y + arc.radius * ny)) return arc.x * nx + arc.y * ny + arc.radius;
  let most = Number.NEGATIVE_INFINITY;
  for (const [x, y] of shape.corners) most = Math.max(most, x * nx + y * ny);
  return most;
}

/** How far the shape's farthest place is from a point. Exact. Millimetres. */
export function farthestMm(shape: PlanShape, x: number, y: number): number {
  let most = 0;
  for (const [px, py] of shape.corners) most = Math.max(most, Math.hypot(px - x, py - y));
  const arc = shape.arc;
  if (!arc) return most;
  const apart = Math.hypot(arc.x - x, arc.y - y);
  if (apart < SAME_PLACE_MM) return Math.max(most, arc.radius);
  const farX = arc.x + (arc.radius * (arc.x - x)) / apart;
  const farY = arc.y + (arc.radius * (arc.y - y)) / apart;
  return onArc(arc, farX, farY) ? Math.max(most, apart + arc.radius) : most;
}

function onArc(arc: NonNullable<PlanShape["arc"]>, x: number, y: number): boolean {
  for (const side of arc.sides) if (side.nx * x + side.ny * y > side.offset + SAME_PLACE_MM) return false;
  return true;
}
