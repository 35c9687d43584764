import { type ConvexRegion, edgeDistanceMm, placedRegion } from "../../kiln/convex-region.ts";
import { radians } from "../../measures/angle.ts";
import type { ClearanceRules } from "../clearance-rules.ts";
import type { Standoff } from "../packing/level-space.ts";
import { planClearance } from "./standing-room.ts";

/** A shelf of a given plan, in its place. Millimetres. */
export interface GivenShelf {
  readonly region: ConvexRegion;
  /** Places along its edge, all round. */
  readonly edge: readonly (readonly [number, number])[];
  readonly areaMm2: number;
  readonly middleX: number;
  readonly middleY: number;
  readonly undersideMm: number;
  readonly topMm: number;
  readonly massKg: number;
}

// Faces within a thousandth of a millimetre are at one height: the checker's own tolerance.
const SAME_HEIGHT_MM = 1e-3;

/** Places along a region's edge, a degree apart seen from (x, y), which the region holds. */
export function outline(region: ConvexRegion, x: number, y: number): [number, number][] {
  const about = placedRegion(region, -x, -y, 0);
  return Array.from({ length: 360 }, (_, degree) => {
    const away = Math.max(0, edgeDistanceMm(about, degree));
    return [x + away * Math.cos(radians(degree)), y + away * Math.sin(radians(degree))];
  });
}

/**
 * How another shelf bars ware that stands on one: not at all where it lies lower; by a height where it covers the whole
 * shelf; else by the straight line between the two, which too tall a piece may not pass. What may stand on the other shelf
 * counts as standing there, so that whatever is set down on either keeps its gap.
 *
 * @param narrowestMm pieces need at least this much room beside the line, or the shelf counts as covered
 * @returns the tallest piece that passes beneath, a line with what to keep from it, or null
 */
export function shelfInTheWay(
  own: GivenShelf,
  other: GivenShelf,
  rules: ClearanceRules,
  narrowestMm: number,
): Standoff | number | null {
  const { headroomMm, gapMm } = rules;
  if (other.topMm < own.topMm - SAME_HEIGHT_MM) return null;
  const line = lineBetween(own, other);
  // Two shelves at one height: the ware of each keeps half the gap from the line between.
  if (other.topMm <= own.topMm + SAME_HEIGHT_MM) return { obstacle: line.fence, clearanceFor: () => gapMm / 2 };
  if (line.roomMm < narrowestMm) {
    return Math.min(other.undersideMm - headroomMm, other.topMm - gapMm) - own.topMm;
  }
  return {
    obstacle: line.fence,
    clearanceFor: (pieceMm) =>
      Math.max(
        planClearance(own.topMm, pieceMm, other.undersideMm, other.topMm, headroomMm),
        planClearance(own.topMm, pieceMm, other.topMm, Number.POSITIVE_INFINITY, gapMm),
      ),
  };
}

/** The straight line along the other shelf's edge that leaves one's own the most room. */
function lineBetween(
  own: GivenShelf,
  other: GivenShelf,
): { readonly fence: Extract<Standoff["obstacle"], { kind: "beyond" }>; readonly roomMm: number } {
  const sides = [...other.region.sides];
  const { circle } = other.region;
  if (circle) {
    const away = Math.hypot(own.middleX - circle.x, own.middleY - circle.y);
    const nx = away > 1e-9 ? (own.middleX - circle.x) / away : 1;
    const ny = away > 1e-9 ? (own.middleY - circle.y) / away : 0;
    sides.push({ nx, ny, offset: nx * circle.x + ny * circle.y + circle.radius });
  }
  let roomMm = Number.NEGATIVE_INFINITY;
  let best = sides[0] as (typeof sides)[number];
  for (const side of sides) {
    const room = Math.max(...own.edge.map(([x, y]) => side.nx * x + side.ny * y)) - side.offset;
    if (room <= roomMm) continue;
    roomMm = room;
    best = side;
  }
  return { fence: { kind: "beyond", nx: -best.nx, ny: -best.ny, offset: -best.offset }, roomMm };
}
