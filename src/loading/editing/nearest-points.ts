import type { ConvexRegion } from "../../kiln/convex-region.ts";
import type { Place } from "../checker/broken.ts";
import type { Clearance } from "../checker/clearances.ts";
import type { Scene } from "../checker/scene.ts";
import { meridianDistanceMm } from "../solids/meridian.ts";
import { planDistanceMm } from "../solids/plan-distance.ts";
import { lineShape, type PlanPoint, type PlanShape } from "../solids/plan-shape.ts";
import { type Solid, type Upright, widestMm } from "../solids/upright.ts";

/** Two places seen from above, to draw a distance between: on the piece's outline and on the other thing's. Millimetres. */
export interface NearestPoints {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const points = ([x1, y1]: PlanPoint, [x2, y2]: PlanPoint): NearestPoints => ({ x1, y1, x2, y2 });

/**
 * Where a piece and the thing it is nearest to come closest, seen from above: the ends of a dimension line. What lies
 * above or beneath it (the lid, a shelf) has no such line. Where outlines overlap seen from above, as a rim over a
 * neighbour's foot, both ends are one place.
 *
 * @param scene where everything but the piece stands
 * @param piece the piece as a solid, where it is held
 * @param near the thing, as `clearancesIn` tells it
 */
export function nearestPoints(
  scene: Scene,
  piece: Solid,
  near: Pick<Clearance, "kind" | "place">,
): NearestPoints | null {
  const { kind, place } = near;
  if (kind === "wall") return toEdge(piece, scene.chamber);
  if (kind === "shelf edge") {
    const shelf = place.kind === "shelf" ? scene.shelves[place.level] : undefined;
    return shelf ? toEdge(piece, shelf.region) : null;
  }
  const other = partsAt(scene, place);
  return other && toParts(piece.parts, other);
}

function partsAt(scene: Scene, place: Place): readonly Upright[] | null {
  switch (place.kind) {
    case "piece":
      return (
        scene.pieces.find((each) => each.level === place.level && each.placement === place.placement)?.solid.parts ??
        null
      );
    case "post":
      return scene.posts.find((each) => each.level === place.level && each.post === place.post)?.stack ?? null;
    case "probe":
      return scene.probes[place.probe]?.solid.parts ?? null;
    case "spyhole": {
      const mouth = scene.mouths.find((each) => each.place.kind === "spyhole" && each.place.spyhole === place.spyhole);
      if (!mouth) return null;
      const { x, y, nx, ny, radiusMm, heightMm } = mouth.mouth;
      const core = lineShape(x - ny * radiusMm, y + nx * radiusMm, x + ny * radiusMm, y - nx * radiusMm);
      return [{ core, rings: [[heightMm, 0]] }];
    }
    default:
      return null;
  }
}

function toParts(parts: readonly Upright[], others: readonly Upright[]): NearestPoints | null {
  let best: NearestPoints | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  for (const part of parts) {
    for (const other of others) {
      const apart = meridianDistanceMm(planDistanceMm(part.core, other.core), part.rings, other.rings);
      if (apart >= nearest) continue;
      nearest = apart;
      best = between(part, other);
    }
  }
  return best;
}

/** The ends between two swollen cores: between the cores' nearest places, each end drawn in by its swelling. */
function between(a: Upright, b: Upright): NearestPoints {
  const [from, to] = nearestOfCores(a.core, b.core);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-9) return points(from, from);
  const [ra, rb] = [widestMm(a), widestMm(b)];
  const at = (along: number): PlanPoint => [
    from[0] + ((to[0] - from[0]) * along) / length,
    from[1] + ((to[1] - from[1]) * along) / length,
  ];
  if (ra + rb >= length) {
    const middle = at(Math.min(length, Math.max(0, (ra + length - rb) / 2)));
    return points(middle, middle);
  }
  return points(at(ra), at(length - rb));
}

/** The nearest places of two cores without arcs: points, lines and posts' squares. One of them is a corner. */
function nearestOfCores(a: PlanShape, b: PlanShape): readonly [PlanPoint, PlanPoint] {
  let best: readonly [PlanPoint, PlanPoint] = [a.corners[0] as PlanPoint, b.corners[0] as PlanPoint];
  let nearest = Number.POSITIVE_INFINITY;
  const hear = (onA: PlanPoint, onB: PlanPoint): void => {
    const apart = Math.hypot(onA[0] - onB[0], onA[1] - onB[1]);
    if (apart >= nearest) return;
    nearest = apart;
    best = [onA, onB];
  };
  for (const corner of a.corners) for (const [from, to] of sidesOf(b)) hear(corner, onLine(corner, from, to));
  for (const corner of b.corners) for (const [from, to] of sidesOf(a)) hear(onLine(corner, from, to), corner);
  return best;
}

/** Every pair of corners: the true sides and the chords inside, which are never nearer. */
function sidesOf({ corners }: PlanShape): (readonly [PlanPoint, PlanPoint])[] {
  if (corners.length === 1) return [[corners[0] as PlanPoint, corners[0] as PlanPoint]];
  return corners.flatMap((from, i) => corners.slice(i + 1).map((to) => [from, to] as const));
}

function onLine([x, y]: PlanPoint, [x1, y1]: PlanPoint, [x2, y2]: PlanPoint): PlanPoint {
  const square = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = square === 0 ? 0 : ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / square;
  const share = Math.min(1, Math.max(0, along));
  return [x1 + share * (x2 - x1), y1 + share * (y2 - y1)];
}

/** Out to the border a piece is nearest to, or past it. */
function toEdge(piece: Solid, region: ConvexRegion): NearestPoints | null {
  let best: NearestPoints | null = null;
  let least = Number.POSITIVE_INFINITY;
  const hear = (x: number, y: number, nx: number, ny: number, margin: number): void => {
    if (margin >= least) return;
    least = margin;
    best = points([x, y], [x + nx * margin, y + ny * margin]);
  };
  for (const part of piece.parts) {
    const radius = widestMm(part);
    for (const [cx, cy] of part.core.corners) {
      for (const { nx, ny, offset } of region.sides) {
        hear(cx + nx * radius, cy + ny * radius, nx, ny, offset - nx * cx - ny * cy - radius);
      }
      if (!region.circle) continue;
      const { x, y, radius: around } = region.circle;
      const out = Math.hypot(cx - x, cy - y);
      const [nx, ny] = out < 1e-9 ? [1, 0] : [(cx - x) / out, (cy - y) / out];
      hear(cx + nx * radius, cy + ny * radius, nx, ny, around - out - radius);
    }
  }
  return best;
}
