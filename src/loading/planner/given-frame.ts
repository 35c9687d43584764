import { type ConvexRegion, placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { shelfMassKg } from "../../kiln/shelf-mass.ts";
import { radians } from "../../measures/angle.ts";
import type { Level, PlacedPost, Placement } from "../load-plan.ts";
import type { Standoff } from "../packing/level-space.ts";
import { shelfMiddle } from "../solids/furniture-solids.ts";
import type { Footing } from "./balance.ts";
import { type GivenShelf, outline, shelfInTheWay } from "./given-shelf.ts";
import type { Around } from "./plan-around.ts";
import type { Frame, Stand } from "./stand.ts";
import { fittingStandoffs, planClearance, postStandoff, spaceFrom } from "./standing-room.ts";
import type { LoadTask } from "./task.ts";

// A hundredth of the least that a plan's own digits tell: what is exactly at a limit keeps it.
const ROUNDING_MM = 1e-5;
const NO_TRIANGLE_MM2 = 1;
// Heights within a thousandth of a millimetre are the same: the checker's own tolerance.
const SAME_HEIGHT_MM = 1e-3;

/**
 * The furniture of a given plan with its kept pieces, ready to be loaded. Its levels may be half shelves, or stand at odd
 * heights beside each other, in any order. Seen from each level, the posts of all others are obstacles at their own heights,
 * so are the pieces kept on them; a shelf set higher bars what is too tall to pass beneath.
 */
export function givenFrame(task: LoadTask, around: Around): Frame {
  const shelves = around.plan.levels.map((level) => givenShelf(task, level));
  return {
    stands: shelves.map((_, i) => givenStand(task, around, shelves, i)),
    furniture: around.plan.levels.map(({ placements: _, ...furniture }) => furniture),
    shifted: null,
  };
}

/** The kind of a placed piece and its place from a stand's middle; null for a kind the request has not. */
export function pieceStanding(
  task: LoadTask,
  { middleX, middleY }: Pick<Stand, "middleX" | "middleY">,
  { ware, xMm, yMm, turnDeg }: Placement,
): { readonly kind: number; readonly place: readonly [number, number, number] } | null {
  const kind = task.request.ware.findIndex((each) => each.name === ware);
  if (kind < 0) return null;
  const { swingMm } = task.kinds[kind] as LoadTask["kinds"][number];
  return { kind, place: [xMm - middleX, yMm - middleY, radians(turnDeg) * swingMm] };
}

function givenShelf(task: LoadTask, level: Level): GivenShelf {
  const kind = task.request.furniture.shelves.find((shelf) => shelf.name === level.shelf) as Shelf;
  const { areaMm2, x, y } = shelfMiddle(kind);
  const turn = radians(level.turnDeg);
  const region = placedRegion(shelfRegion(kind), level.xMm, level.yMm, level.turnDeg);
  return {
    region,
    edge: outline(region, level.xMm, level.yMm),
    areaMm2,
    middleX: level.xMm + x * Math.cos(turn) - y * Math.sin(turn),
    middleY: level.yMm + x * Math.sin(turn) + y * Math.cos(turn),
    undersideMm: level.topMm - kind.thicknessMm,
    topMm: level.topMm,
    massKg: shelfMassKg(areaMm2, kind.thicknessMm),
  };
}

function givenStand(task: LoadTask, around: Around, shelves: readonly GivenShelf[], index: number): Stand {
  const { rules, kiln } = task.request;
  const own = shelves[index] as GivenShelf;
  const { middleX, middleY, topMm } = own;
  let clearMm = kiln.chamber.depthMm - rules.lidMm - topMm;
  const standoffs: Standoff[] = [];
  const narrowest = Math.min(...task.kinds.map((kind) => 2 * kind.radius));
  for (const [i, other] of shelves.entries()) {
    if (i === index) continue;
    const barred = shelfInTheWay(own, other, rules, narrowest);
    if (typeof barred === "number") clearMm = Math.min(clearMm, barred);
    else if (barred) standoffs.push(barred);
    for (const post of (around.plan.levels[i] as Level).posts) {
      standoffs.push(postInTheWay(task, shelves, own, i, post));
    }
    for (const piece of around.kept[i] ?? []) standoffs.push(...pieceParts(task, own, other, piece));
  }
  const heights = [...new Set(task.kinds.map((kind) => kind.heightMm))];
  const space = {
    bounds: [
      { region: own.region, marginMm: 0 },
      { region: task.walls, marginMm: rules.gapMm },
    ],
    standoffs: [
      // What every piece passes by in height is in nobody's way.
      ...standoffs.filter(({ clearanceFor }) => heights.some((height) => clearanceFor(height) >= 0)),
      ...fittingStandoffs(task, topMm),
    ],
    gapMm: rules.gapMm,
  };
  return {
    middleX,
    middleY,
    areaMm2: own.areaMm2,
    spreadMm: Math.max(...own.edge.map(([x, y]) => Math.hypot(x - middleX, y - middleY))),
    clearMm: clearMm + ROUNDING_MM,
    space: spaceFrom(space, middleX, middleY),
    footing: footingOf(own, (around.plan.levels[index] as Level).posts),
    held: heldOn(task, own, around.kept[index] ?? []),
  };
}

function heldOn(task: LoadTask, own: GivenShelf, placements: readonly Placement[]): Stand["held"] {
  const pieces = placements.flatMap((placement) => pieceStanding(task, own, placement) ?? []);
  return {
    kindOf: Int32Array.from(pieces, ({ kind }) => kind),
    places: Float64Array.from(pieces.flatMap(({ place }) => place)),
    placements,
  };
}

/**
 * A post, or two stacked, that carries another level. It reaches from whatever it may be standing on to that level, and as far
 * as its own heights take it where the two do not agree.
 */
function postInTheWay(
  task: LoadTask,
  shelves: readonly GivenShelf[],
  own: GivenShelf,
  at: number,
  post: PlacedPost,
): Standoff {
  const carried = shelves[at] as GivenShelf;
  const { xMm: x, yMm: y, turnDeg, heightsMm } = post;
  const parts = heightsMm.map((height) => postOf(task, height));
  const widthMm = Math.max(...parts.map((part) => part.widthMm));
  const round = parts.every((part) => part.round);
  const tall = heightsMm.reduce((sum, height) => sum + height, 0);
  // A foot stands on the highest shelf beneath that it is over, be it by a corner.
  const highestUnder = (reachMm: number): number =>
    shelves
      .filter((shelf) => shelf !== carried && shelf.topMm < carried.undersideMm && reaches(shelf.region, x, y, reachMm))
      .reduce((highest, shelf) => Math.max(highest, shelf.topMm), 0);
  const low = Math.min(highestUnder(0), carried.undersideMm - tall);
  const high = Math.max(highestUnder(widthMm * Math.SQRT1_2) + tall, carried.undersideMm);
  return postStandoff({ x, y, turnDeg, widthMm, round }, (pieceMm) =>
    planClearance(own.topMm, pieceMm, low, high, task.request.rules.gapMm),
  );
}

/** Whether a place lies in a region, or within so far of it. */
const reaches = ({ circle, sides }: ConvexRegion, x: number, y: number, reachMm: number): boolean =>
  sides.every((side) => side.nx * x + side.ny * y - side.offset <= reachMm) &&
  (!circle || Math.hypot(x - circle.x, y - circle.y) - circle.radius <= reachMm);

/** A plan names posts by height alone: the widest of that height is taken, and of a height she has none of, her widest. */
function postOf(task: LoadTask, heightMm: number): { widthMm: number; round: boolean } {
  const alike = task.posts.filter((post) => Math.abs(post.heightMm - heightMm) <= SAME_HEIGHT_MM);
  if (alike.length === 0) {
    return { widthMm: Math.max(0, ...task.request.furniture.posts.map((post) => post.widthMm)), round: false };
  }
  return { widthMm: Math.max(...alike.map((post) => post.widthMm)), round: alike.every((post) => post.round) };
}

/** A piece kept on another level, its handle and spout too. */
function pieceParts(task: LoadTask, own: GivenShelf, standsOn: GivenShelf, placement: Placement): Standoff[] {
  const found = pieceStanding(task, { middleX: 0, middleY: 0 }, placement);
  if (!found) return [];
  const kind = task.kinds[found.kind] as LoadTask["kinds"][number];
  const { xMm, yMm } = placement;
  const turn = radians(placement.turnDeg);
  const { gapMm } = task.request.rules;
  const part = (x2: number, y2: number, radius: number): Standoff => ({
    obstacle: { kind: "line", x1: xMm, y1: yMm, x2, y2 },
    clearanceFor: (pieceMm) =>
      radius + planClearance(own.topMm, pieceMm, standsOn.topMm, standsOn.topMm + kind.heightMm, gapMm),
  });
  return [
    part(xMm, yMm, kind.radius),
    ...kind.arms.map(({ angle, length, radius }) =>
      part(xMm + length * Math.cos(turn + angle), yMm + length * Math.sin(turn + angle), radius),
    ),
  ];
}

function footingOf(own: GivenShelf, posts: readonly PlacedPost[]): Footing {
  const { middleX, middleY, massKg } = own;
  // The shelf's middle of mass is the stand's own middle.
  const shelf = { shelfKg: massKg, shelfX: 0, shelfY: 0 };
  const [a, b, c] = posts;
  if (!a || !b || !c || posts.length > 3) return { triangle: null, ...shelf };
  const twiceArea = (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm);
  if (Math.abs(twiceArea) < 2 * NO_TRIANGLE_MM2) return { triangle: null, ...shelf };
  const round = twiceArea > 0 ? [a, b, c] : [a, c, b];
  const triangle = { x: round.map((post) => post.xMm - middleX), y: round.map((post) => post.yMm - middleY) };
  return { triangle, ...shelf };
}
