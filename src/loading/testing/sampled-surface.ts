import { edgeDistanceMm, shelfRegion } from "../../kiln/convex-region.ts";
import type { Form, Stand } from "./random-solids.ts";

type Point = readonly [x: number, y: number, z: number];

/** Points strewn over a form's surface, and how far from any place on it the nearest of them can be. Millimetres. */
export interface SampledSurface {
  readonly points: readonly Point[];
  readonly withinMm: number;
}

const ROUND = 40;
const ACROSS = 6;
const UP = 8;

/**
 * Strews points over a form's surface: rings of points up its side, and smaller rings on its foot and top. Works from
 * the outline alone and knows nothing of how distances are found.
 */
export function sampledSurface(form: Form, stand: Stand): SampledSurface {
  const rings: Point[][] = [];
  const heights = sideHeights(form);
  const ring = (up: number, out: number, share: number): void => {
    rings.push(
      Array.from({ length: ROUND }, (_, i) => outline(form, i / ROUND, out, share)).map(([x, y]) => [x, y, up]),
    );
  };
  for (let k = 0; k < ACROSS; k++) ring(heights[0]![0], heights[0]![1], k / ACROSS);
  for (const [up, out] of heights) ring(up, out, 1);
  for (let k = ACROSS - 1; k >= 0; k--) ring(heights.at(-1)![0], heights.at(-1)![1], k / ACROSS);
  let widest = 0;
  rings.forEach((points, i) => {
    points.forEach((point, j) => {
      widest = Math.max(widest, apart(point, points[(j + 1) % ROUND]!), apart(point, rings[i + 1]?.[j] ?? point));
    });
  });
  const cos = Math.cos((stand.turnDeg * Math.PI) / 180);
  const sin = Math.sin((stand.turnDeg * Math.PI) / 180);
  const points = rings.flat().map(([x, y, z]): Point => {
    return [stand.x + x * cos - y * sin, stand.y + x * sin + y * cos, stand.z + z];
  });
  return { points, withinMm: widest };
}

/** The least distance between points of two surfaces, in millimetres. */
export function nearestSamplesMm(a: SampledSurface, b: SampledSurface): number {
  let least = Number.POSITIVE_INFINITY;
  for (const point of a.points) for (const other of b.points) least = Math.min(least, apart(point, other));
  return least;
}

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Heights up the side with how far out the outline is there: a radius for a body, 1 for all else. */
function sideHeights(form: Form): [number, number][] {
  if (form.kind === "line") return [[0, 1]];
  const knots: readonly (readonly [number, number])[] =
    form.kind === "body"
      ? form.rings
      : [
          [0, 1],
          [form.kind === "shelf" ? form.shelf.thicknessMm : form.height, 1],
        ];
  return knots.slice(1).flatMap(([up, out], i) => {
    const [low, lowOut] = knots[i]!;
    return Array.from({ length: UP + 1 }, (_, k): [number, number] => [
      low + ((up - low) * k) / UP,
      lowOut + ((out - lowOut) * k) / UP,
    ]);
  });
}

/** A point of the outline, `share` of the way from the middle, unturned. */
function outline(form: Form, around: number, out: number, share: number): [number, number] {
  const angle = 2 * Math.PI * around;
  switch (form.kind) {
    case "body":
      return [out * share * Math.cos(angle), out * share * Math.sin(angle)];
    case "post": {
      const edge = form.round
        ? form.width / 2
        : form.width / 2 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
      return [edge * share * Math.cos(angle), edge * share * Math.sin(angle)];
    }
    case "line":
      return [form.length * share * Math.abs(1 - 2 * around), 0];
    case "stadium": {
      // The outline's middle is the middle of its axis; half of the points go round each end.
      const end = Math.abs(around - 0.5) >= 0.25 ? form.length / 2 : -form.length / 2;
      const x = (end + form.radius * Math.cos(angle)) * share;
      return [form.length / 2 + x, form.radius * Math.sin(angle) * share];
    }
    case "shelf": {
      const region = shelfRegion(form.shelf);
      const lift = form.shelf.shape === "half-disc" ? form.shelf.diameterMm / 8 : 0;
      // From a middle inside a half disc, not on its straight side.
      const moved = {
        circle: region.circle && { ...region.circle, y: region.circle.y - lift },
        sides: region.sides.map((side) => ({ ...side, offset: side.offset - side.ny * lift })),
      };
      const edge = edgeDistanceMm(moved, (angle * 180) / Math.PI) * share;
      return [edge * Math.cos(angle), lift + edge * Math.sin(angle)];
    }
  }
}
