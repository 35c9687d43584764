import { type ConvexRegion, regionCorners } from "../../../kiln/convex-region.ts";

export type PlanPoint = readonly [x: number, y: number];

const AROUND = 72;

/** A region's outline as corners, counter-clockwise seen from above; an arc as short straight steps. Millimetres. */
export function outlineOf(region: ConvexRegion): PlanPoint[] {
  const { circle, sides } = region;
  if (!circle) return regionCorners(region);
  const round = Array.from({ length: AROUND }, (_, i): PlanPoint => {
    const angle = (2 * Math.PI * i) / AROUND;
    return [circle.x + circle.radius * Math.cos(angle), circle.y + circle.radius * Math.sin(angle)];
  });
  return sides.reduce(cut, round);
}

/** What of a convex outline lies on the inner side of a straight side. */
function cut(outline: PlanPoint[], side: ConvexRegion["sides"][number]): PlanPoint[] {
  const beyond = ([x, y]: PlanPoint): number => side.nx * x + side.ny * y - side.offset;
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length] as PlanPoint;
    const [a, b] = [beyond(from), beyond(to)];
    const kept = a <= 0 ? [from] : [];
    if (a < 0 === b < 0 || a === b) return kept;
    const t = a / (a - b);
    return [...kept, [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])] as const];
  });
}
