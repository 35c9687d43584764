import { type ConvexRegion, placedRegion } from "../../kiln/convex-region.ts";
import type { Post, Shelf } from "../../kiln/furniture.ts";
import { pointShape, regionShape } from "./plan-shape.ts";
import { prism, type Upright } from "./upright.ts";

/** A slab or block with a region's outline between two heights. Millimetres. */
export function regionPrism(region: ConvexRegion, bottomMm: number, topMm: number): Upright {
  const circle = region.circle;
  return circle && region.sides.length === 0
    ? prism(pointShape(circle.x, circle.y), circle.radius, bottomMm, topMm)
    : prism(regionShape(region), 0, bottomMm, topMm);
}

/** One post of a stack, standing with its axis at (x, y). Millimetres, degrees. */
export function postPrism(
  post: Pick<Post, "shape" | "widthMm">,
  x: number,
  y: number,
  turnDeg: number,
  bottomMm: number,
  topMm: number,
): Upright {
  const half = post.widthMm / 2;
  if (post.shape === "round") return prism(pointShape(x, y), half, bottomMm, topMm);
  const square: ConvexRegion = {
    circle: null,
    sides: [
      { nx: 1, ny: 0, offset: half },
      { nx: 0, ny: 1, offset: half },
      { nx: -1, ny: 0, offset: half },
      { nx: 0, ny: -1, offset: half },
    ],
  };
  return prism(regionShape(placedRegion(square, x, y, turnDeg)), 0, bottomMm, topMm);
}

/** A shelf's area and the middle of its mass, about its own middle, unturned. Millimetres. */
export function shelfMiddle(shelf: Shelf): { areaMm2: number; x: number; y: number } {
  switch (shelf.shape) {
    case "disc":
      return { areaMm2: (Math.PI * shelf.diameterMm ** 2) / 4, x: 0, y: 0 };
    case "half-disc":
      // A half disc's centroid stands 4r/3π from its straight side (any statics handbook; from memory).
      return { areaMm2: (Math.PI * shelf.diameterMm ** 2) / 8, x: 0, y: (2 * shelf.diameterMm) / (3 * Math.PI) };
    case "polygon":
      return { areaMm2: (shelf.sides * shelf.acrossFlatsMm ** 2 * Math.tan(Math.PI / shelf.sides)) / 4, x: 0, y: 0 };
    case "rectangle":
      return { areaMm2: shelf.widthMm * shelf.lengthMm, x: 0, y: 0 };
  }
}
