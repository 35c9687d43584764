import { type ConvexRegion, regionCorners } from "../../../kiln/convex-region.ts";
import { regionShape } from "../../../loading/solids/plan-shape.ts";

/** A chamber's or shelf's outline as an SVG path, seen from above with the far side up. Millimetres. */
export function regionPath(region: ConvexRegion): string {
  const { circle, sides } = region;
  if (!circle) return closed(regionCorners(region));
  const { x, y, radius } = circle;
  if (sides.length === 0) {
    const arc = `A ${radius} ${radius} 0 1 0`;
    return `M ${x - radius} ${-y} ${arc} ${x + radius} ${-y} ${arc} ${x - radius} ${-y} Z`;
  }
  // A disc cut by one side: from the side's left end, seen from inside, round the arc to its right end.
  const { corners, normals } = regionShape(region);
  const [nx, ny] = normals[0] as readonly [number, number];
  const along = ([cx, cy]: readonly [number, number]) => nx * cy - ny * cx;
  const [from, to] = [...corners].sort((a, b) => along(a) - along(b)) as [[number, number], [number, number]];
  return `M ${from[0]} ${-from[1]} A ${radius} ${radius} 0 0 1 ${to[0]} ${-to[1]} Z`;
}

const closed = (corners: readonly (readonly [number, number])[]): string =>
  `${corners.map(([x, y], i) => `${i === 0 ? "M" : "L"} ${x} ${-y}`).join(" ")} Z`;
