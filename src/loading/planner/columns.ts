import { type ConvexRegion, edgeDistanceMm } from "../../kiln/convex-region.ts";
import type { ProbeLine } from "../../kiln/wall-fittings.ts";
import { radians } from "../../measures/angle.ts";
import { closestOnSegments } from "../packing/closest.ts";

/** Where the three columns of posts stand: one place each, the same on every level. */
export interface Columns {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** How their square posts are turned: a flat toward the edge. */
  readonly turnDeg: readonly number[];
}

const SPARE_MM = 0.02;

/**
 * Three columns at 120° about the axis, as near the shelves' edge as their posts allow: there they take the least room.
 *
 * @param regions every shelf that a post stands on or carries
 * @param widthMm the widest post, taken as square
 * @param firstDeg the first column's direction
 * @param inward a share of the way back toward the axis, 0 for the edge itself
 * @returns null where the posts find no room
 */
export function columnsAt(
  regions: readonly ConvexRegion[],
  widthMm: number,
  firstDeg: number,
  inward: number,
): Columns | null {
  const x: number[] = [];
  const y: number[] = [];
  const turnDeg: number[] = [];
  for (let i = 0; i < 3; i++) {
    const angle = firstDeg + 120 * i;
    const edge = Math.min(...regions.map((region) => edgeDistanceMm(region, angle)));
    let low = 0;
    let high = edge;
    if (!fits(regions, 0, angle, widthMm / 2)) return null;
    for (let step = 0; step < 40; step++) {
      const middle = (low + high) / 2;
      if (fits(regions, middle, angle, widthMm / 2)) low = middle;
      else high = middle;
    }
    const away = low * (1 - inward);
    if (away < widthMm) return null;
    x.push(Math.round(away * Math.cos(radians(angle)) * 1000) / 1000);
    y.push(Math.round(away * Math.sin(radians(angle)) * 1000) / 1000);
    turnDeg.push(((angle % 360) + 360) % 360);
  }
  return { x, y, turnDeg };
}

/** True where a square post with a flat outward, `away` from the axis, stands wholly within every region. */
function fits(regions: readonly ConvexRegion[], away: number, angleDeg: number, half: number): boolean {
  const cos = Math.cos(radians(angleDeg));
  const sin = Math.sin(radians(angleDeg));
  return [-1, 1].every((out) =>
    [-1, 1].every((across) => {
      const along = away + out * half;
      const x = along * cos - across * half * sin;
      const y = along * sin + across * half * cos;
      return regions.every(
        (region) =>
          region.sides.every((side) => side.nx * x + side.ny * y <= side.offset - SPARE_MM) &&
          (!region.circle || Math.hypot(x - region.circle.x, y - region.circle.y) <= region.circle.radius - SPARE_MM),
      );
    }),
  );
}

/** True where a post at a column between two heights keeps `probeMm` from a probe, its half diagonal reckoned all round. */
export function postClearsProbe(
  columns: Columns,
  column: number,
  widthMm: number,
  fromMm: number,
  toMm: number,
  probe: ProbeLine,
  probeMm: number,
): boolean {
  const up = Math.max(0, fromMm - probe.heightMm, probe.heightMm - toMm);
  if (up > 0 && up >= probeMm) return true;
  const apart = Math.sqrt(
    closestOnSegments(
      columns.x[column] as number,
      columns.y[column] as number,
      0,
      0,
      probe.wallX,
      probe.wallY,
      probe.tipX - probe.wallX,
      probe.tipY - probe.wallY,
    ),
  );
  return Math.hypot(Math.max(0, apart - widthMm * Math.SQRT1_2), up) >= probeMm + SPARE_MM;
}

/** True where a shelf lying between two heights keeps `probeMm` from a probe. */
export function shelfClearsProbe(
  region: ConvexRegion,
  undersideMm: number,
  topMm: number,
  probe: ProbeLine,
  probeMm: number,
): boolean {
  const up = Math.max(0, undersideMm - probe.heightMm, probe.heightMm - topMm);
  // A probe runs toward the axis, which every full shelf covers: its tip is what comes nearest.
  let out = 0;
  for (const side of region.sides) out = Math.max(out, side.nx * probe.tipX + side.ny * probe.tipY - side.offset);
  if (region.circle) {
    out = Math.max(out, Math.hypot(probe.tipX - region.circle.x, probe.tipY - region.circle.y) - region.circle.radius);
  }
  return Math.hypot(up, out) >= probeMm + SPARE_MM;
}
