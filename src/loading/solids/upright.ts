import { meridianDistanceMm, type Rings } from "./meridian.ts";
import { planDistanceMm } from "./plan-distance.ts";
import { farthestMm, type PlanShape } from "./plan-shape.ts";

/** An upright solid: at every height, all places within its ring's radius of its core. */
export interface Upright {
  readonly core: PlanShape;
  readonly rings: Rings;
}

/** A thing made of upright solids, with a round box about it so that far things need no exact look. Millimetres. */
export interface Solid {
  readonly parts: readonly Upright[];
  readonly x: number;
  readonly y: number;
  readonly reachMm: number;
  readonly bottomMm: number;
  readonly topMm: number;
}

/** An upright solid with the same outline all the way up. */
export function prism(core: PlanShape, radiusMm: number, bottomMm: number, topMm: number): Upright {
  return {
    core,
    rings: [
      [bottomMm, radiusMm],
      [topMm, radiusMm],
    ],
  };
}

/** The widest an upright solid swells beyond its core. */
export function widestMm(part: Upright): number {
  let widest = 0;
  for (const [, radius] of part.rings) widest = Math.max(widest, radius);
  return widest;
}

/** Parts, one or more, as one solid; (x, y) is anywhere near its middle. */
export function solidOf(x: number, y: number, parts: readonly Upright[]): Solid {
  return {
    parts,
    x,
    y,
    reachMm: Math.max(...parts.map((part) => farthestMm(part.core, x, y) + widestMm(part))),
    bottomMm: Math.min(...parts.map((part) => part.rings[0]![0])),
    topMm: Math.max(...parts.map((part) => part.rings.at(-1)![0])),
  };
}

/**
 * The distance in space between two solids. Exact.
 *
 * @param withinMm farther than this need not be told exactly: an answer above it may be less than the true distance
 * @returns millimetres; below zero where they overlap: how far apart they would have to be moved
 */
export function solidDistanceMm(a: Solid, b: Solid, withinMm = Number.POSITIVE_INFINITY): number {
  const atLeast = boxDistanceMm(a, b);
  if (atLeast > withinMm) return atLeast;
  let nearest = Number.POSITIVE_INFINITY;
  for (const part of a.parts) {
    for (const other of b.parts) {
      nearest = Math.min(nearest, meridianDistanceMm(planDistanceMm(part.core, other.core), part.rings, other.rings));
    }
  }
  return nearest;
}

/** A distance two solids cannot be nearer than. */
function boxDistanceMm(a: Solid, b: Solid): number {
  const across = Math.hypot(a.x - b.x, a.y - b.y) - a.reachMm - b.reachMm;
  const up = Math.max(a.bottomMm - b.topMm, b.bottomMm - a.topMm);
  return Math.hypot(Math.max(0, across), Math.max(0, up));
}
