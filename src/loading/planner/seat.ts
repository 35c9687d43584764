import type { Chamber } from "../../kiln/chamber.ts";
import {
  type ConvexRegion,
  chamberRegion,
  edgeDistanceMm,
  placedRegion,
  regionCorners,
  shelfRegion,
} from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";

/** A kind of shelf as it can lie in this chamber: about the axis, turned so that it clears the wall. */
export interface Seat {
  readonly shelf: Shelf;
  readonly turnDeg: number;
  readonly region: ConvexRegion;
  readonly areaMm2: number;
}

// A shelf that keeps its distance exactly keeps it: this much is rounding.
const ROUNDING_MM = 1e-6;

/** How each kind of full shelf can lie in the chamber with `wallMm` to the wall all round; those that cannot are left out. */
export function shelfSeats(chamber: Chamber, shelves: readonly Shelf[], wallMm: number): Seat[] {
  const walls = chamberRegion(chamber);
  const seats: Seat[] = [];
  for (const shelf of shelves) {
    if (shelf.count === 0 || shelf.shape === "half-disc") continue;
    for (const turnDeg of [0, 90, 45, 22.5, 67.5, 30, 60, 15, 75]) {
      const region = placedRegion(shelfRegion(shelf), 0, 0, turnDeg);
      if (!inside(region, walls, wallMm - ROUNDING_MM)) continue;
      seats.push({ shelf, turnDeg, region, areaMm2: regionArea(region) });
      break;
    }
  }
  return seats.sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** True where the shelf keeps its distance from every wall. Distances between convex shapes about one axis, exact for corners. */
function inside(shelf: ConvexRegion, walls: ConvexRegion, marginMm: number): boolean {
  if (shelf.circle) {
    const { radius } = shelf.circle;
    return (
      walls.sides.every((side) => side.offset - radius >= marginMm) &&
      (!walls.circle || walls.circle.radius - radius >= marginMm)
    );
  }
  return regionCorners(shelf).every(
    ([x, y]) =>
      walls.sides.every((side) => side.offset - side.nx * x - side.ny * y >= marginMm) &&
      (!walls.circle || walls.circle.radius - Math.hypot(x, y) >= marginMm),
  );
}

/** The area of a region that holds the origin, by its edge distances all round: to a thousandth, enough to rank with. */
function regionArea(region: ConvexRegion): number {
  const steps = 720;
  let area = 0;
  for (let i = 0; i < steps; i++) area += edgeDistanceMm(region, (360 * (i + 0.5)) / steps) ** 2 * (Math.PI / steps);
  return area;
}
