import { type ConvexRegion, regionCorners } from "../../kiln/convex-region.ts";
import { type PlanShape, regionShape } from "../../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../../loading/solids/upright.ts";
import { closedPath, element, pathOf, type SvgNode } from "../svg-writer.ts";
import type { ToPaper } from "./to-paper.ts";

type Look = Readonly<Record<string, string | number>>;
type Point = readonly [number, number];

/** A chamber's or shelf's outline seen from above. */
export function regionMark(region: ConvexRegion, paper: ToPaper, look: Look): SvgNode {
  const { circle, sides } = region;
  if (circle && sides.length === 0) return discMark(circle.x, circle.y, circle.radius, paper, look);
  if (circle) return halfDiscMark(regionShape(region), paper, look);
  return polygonMark(regionCorners(region), paper, look);
}

/**
 * An upright solid's outline seen from above: a disc, a stadium or a straight-sided block, as wide as it is anywhere.
 * These are the solids the rule checker measures, so the drawing shows what was checked.
 */
export function uprightMark(part: Upright, paper: ToPaper, look: Look): SvgNode {
  const { corners, arc } = part.core;
  const [a, b] = corners as [Point, Point];
  const radius = widestMm(part);
  if (arc) return halfDiscMark(part.core, paper, look);
  if (corners.length === 1) return discMark(a[0], a[1], radius, paper, look);
  if (corners.length === 2) return stadiumMark(a, b, radius, paper, look);
  const middle = [mean(corners.map(([x]) => x)), mean(corners.map(([, y]) => y))] as const;
  const turn = ([x, y]: Point): number => Math.atan2(y - middle[1], x - middle[0]);
  return polygonMark(
    [...corners].sort((p, q) => turn(p) - turn(q)),
    paper,
    look,
  );
}

/** A disc's outline. */
export const discMark = (x: number, y: number, radiusMm: number, paper: ToPaper, look: Look): SvgNode =>
  element("circle", { cx: paper.x(x), cy: paper.y(y), r: paper.length(radiusMm), ...look });

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

const polygonMark = (corners: readonly Point[], paper: ToPaper, look: Look): SvgNode =>
  element("path", { d: closedPath(corners.map(([x, y]) => [paper.x(x), paper.y(y)] as const)), ...look });

/** A line from one point to another, swollen by a radius: how handles and spouts are measured. */
function stadiumMark([x1, y1]: Point, [x2, y2]: Point, radiusMm: number, paper: ToPaper, look: Look): SvgNode {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const sideX = (-(y2 - y1) / length) * radiusMm;
  const sideY = ((x2 - x1) / length) * radiusMm;
  const radius = paper.length(radiusMm);
  const d = pathOf(
    ...["M", paper.x(x1 + sideX), paper.y(y1 + sideY)],
    ...["A", radius, radius, 0, 0, 0, paper.x(x1 - sideX), paper.y(y1 - sideY)],
    ...["L", paper.x(x2 - sideX), paper.y(y2 - sideY)],
    ...["A", radius, radius, 0, 0, 0, paper.x(x2 + sideX), paper.y(y2 + sideY), "Z"],
  );
  return element("path", { d, ...look });
}

/** A disc cut by one straight side: from one end of the side, by the middle of the arc, to the other. */
function halfDiscMark(shape: PlanShape, paper: ToPaper, look: Look): SvgNode {
  const arc = shape.arc as NonNullable<PlanShape["arc"]>;
  const [from, to] = shape.corners as [Point, Point];
  const [nx, ny] = shape.normals[0] as Point;
  const middle = [arc.x - nx * arc.radius, arc.y - ny * arc.radius] as const;
  const cross = (middle[0] - from[0]) * (to[1] - from[1]) - (middle[1] - from[1]) * (to[0] - from[0]);
  const radius = paper.length(arc.radius);
  // Paper's y runs down, so a left turn in the kiln is SVG's sweep 0.
  const arcTo = ([x, y]: Point) => ["A", radius, radius, 0, 0, cross > 0 ? 0 : 1, paper.x(x), paper.y(y)];
  const d = pathOf("M", paper.x(from[0]), paper.y(from[1]), ...arcTo(middle), ...arcTo(to), "Z");
  return element("path", { d, ...look });
}

/** The widest post of a stack: what shows from above. */
export const widestPart = (stack: readonly Upright[]): Upright =>
  stack.reduce((a, b) => (widestMm(b) > widestMm(a) ? b : a));
