import { radians } from "../measures/angle.ts";
import type { Chamber } from "./chamber.ts";
import type { Shelf } from "./furniture.ts";

/** A straight side: the region lies where nx·x + ny·y ≤ offset; (nx, ny) has length one and points outward. */
export interface Side {
  readonly nx: number;
  readonly ny: number;
  readonly offset: number;
}

/** A circle's middle and radius. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/**
 * A convex plan shape: everything inside the circle (where there is one) and on the inner side of every side.
 * Every chamber and every shelf is one: a disc is a circle alone, a half disc a circle and one side, a polygon sides alone.
 */
export interface ConvexRegion {
  readonly circle: Circle | null;
  readonly sides: readonly Side[];
}

/** The chamber's plan shape about its axis. Lengths in millimetres. */
export function chamberRegion(chamber: Chamber): ConvexRegion {
  if (chamber.shape === "round") return { circle: { x: 0, y: 0, radius: chamber.diameterMm / 2 }, sides: [] };
  if (chamber.shape === "polygon") return { circle: null, sides: regularSides(chamber.sides, chamber.acrossFlatsMm) };
  return { circle: null, sides: rectangleSides(chamber.widthMm, chamber.lengthMm) };
}

/** The shelf's plan shape about its own middle, unturned. Lengths in millimetres. */
export function shelfRegion(shelf: Shelf): ConvexRegion {
  if (shelf.shape === "disc") return { circle: { x: 0, y: 0, radius: shelf.diameterMm / 2 }, sides: [] };
  if (shelf.shape === "half-disc") {
    return { circle: { x: 0, y: 0, radius: shelf.diameterMm / 2 }, sides: [{ nx: 0, ny: -1, offset: 0 }] };
  }
  if (shelf.shape === "polygon") return { circle: null, sides: regularSides(shelf.sides, shelf.acrossFlatsMm) };
  return { circle: null, sides: rectangleSides(shelf.widthMm, shelf.lengthMm) };
}

/** The region turned counter-clockwise about its own origin, then moved. */
export function placedRegion(region: ConvexRegion, xMm: number, yMm: number, turnDeg: number): ConvexRegion {
  const cos = Math.cos(radians(turnDeg));
  const sin = Math.sin(radians(turnDeg));
  const circle = region.circle && {
    x: xMm + region.circle.x * cos - region.circle.y * sin,
    y: yMm + region.circle.x * sin + region.circle.y * cos,
    radius: region.circle.radius,
  };
  const sides = region.sides.map((side) => {
    const nx = side.nx * cos - side.ny * sin;
    const ny = side.nx * sin + side.ny * cos;
    return { nx, ny, offset: side.offset + nx * xMm + ny * yMm };
  });
  return { circle, sides };
}

/** How far from the axis the region's edge lies along a direction, for a region that holds the origin. */
export function edgeDistanceMm(region: ConvexRegion, angleDeg: number): number {
  const dx = Math.cos(radians(angleDeg));
  const dy = Math.sin(radians(angleDeg));
  let nearest = Number.POSITIVE_INFINITY;
  for (const side of region.sides) {
    const along = side.nx * dx + side.ny * dy;
    if (along > 1e-12) nearest = Math.min(nearest, side.offset / along);
  }
  if (region.circle) {
    const { x, y, radius } = region.circle;
    const middle = x * dx + y * dy;
    nearest = Math.min(nearest, middle + Math.sqrt(Math.max(0, middle * middle - x * x - y * y + radius * radius)));
  }
  return nearest;
}

/** The region's corners, counter-clockwise, for a region made of sides alone in order of their directions. */
export function regionCorners(region: ConvexRegion): [number, number][] {
  return region.sides.map((side, i) => {
    const next = region.sides[(i + 1) % region.sides.length] as Side;
    const cross = side.nx * next.ny - side.ny * next.nx;
    return [
      (side.offset * next.ny - next.offset * side.ny) / cross,
      (side.nx * next.offset - next.nx * side.offset) / cross,
    ];
  });
}

function regularSides(count: number, acrossFlatsMm: number): Side[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return { nx: Math.cos(angle), ny: Math.sin(angle), offset: acrossFlatsMm / 2 };
  });
}

function rectangleSides(widthMm: number, lengthMm: number): Side[] {
  return [
    { nx: 1, ny: 0, offset: widthMm / 2 },
    { nx: 0, ny: 1, offset: lengthMm / 2 },
    { nx: -1, ny: 0, offset: widthMm / 2 },
    { nx: 0, ny: -1, offset: lengthMm / 2 },
  ];
}
