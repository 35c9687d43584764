import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { wallDistanceMm } from "../rules/gap.ts";
import { shelvesAbove } from "../rules/headroom.ts";
import { edgeMarginMm } from "../rules/shelf-edge.ts";
import { mouthDistanceMm } from "../solids/mouth-distance.ts";
import { type Solid, solidDistanceMm } from "../solids/upright.ts";
import type { Place } from "./broken.ts";
import { type PieceInPlace, type Scene, sceneOf } from "./scene.ts";

/** The nearest thing of one kind to a piece. */
export interface Clearance {
  readonly kind: "ware" | "post" | "wall" | "shelf edge" | "shelf above" | "lid" | "probe" | "spyhole";
  /** Below zero where they overlap. */
  readonly distanceMm: number;
  /** The least the rules ask. */
  readonly leastMm: number;
  /** Its name, for a label: "bowl", "post 1 under level 3", "the lid". */
  readonly to: string;
  readonly place: Place;
}

/**
 * How much room one piece has: for each kind of thing the nearest one and its distance in space, exact. Kinds of which
 * there are none are left out. For an editor's "9 mm to the bowl".
 *
 * @param levelIndex the level's index in the plan, from 0
 * @param placementIndex the piece's index on that level, from 0
 * @returns nothing where there is no such piece
 */
export function clearances(
  request: LoadRequest,
  plan: LoadPlan,
  levelIndex: number,
  placementIndex: number,
): Clearance[] {
  const scene = sceneOf(request, plan);
  const piece = scene.pieces.find((each) => each.level === levelIndex && each.placement === placementIndex);
  if (!piece) return [];
  return clearancesIn(
    scene,
    piece,
    scene.pieces.filter((each) => each !== piece),
  );
}

/** The same for a piece in a scene set up already, against the given other pieces: for many questions about one plan. */
export function clearancesIn(scene: Scene, piece: PieceInPlace, others: readonly PieceInPlace[]): Clearance[] {
  const { rules } = scene;
  const chamber: Place = { kind: "chamber" };
  const posts = scene.posts.filter((post) => post.level !== piece.level);
  const toSolid = (thing: { readonly solid: Solid }, withinMm: number): number =>
    solidDistanceMm(piece.solid, thing.solid, withinMm);
  return [
    ...nearest("ware", rules.gapMm, others, toSolid).map((found) => ({ ...found, to: wareName(others, found.place) })),
    ...nearest("post", rules.gapMm, posts, toSolid),
    {
      kind: "wall",
      distanceMm: wallDistanceMm(scene, piece.solid),
      leastMm: rules.gapMm,
      to: "the chamber wall",
      place: chamber,
    },
    {
      kind: "shelf edge",
      distanceMm: edgeMarginMm(scene, piece),
      leastMm: 0,
      to: "the shelf's edge",
      place: scene.shelves[piece.level]!.place,
    },
    ...nearest("shelf above", rules.headroomMm, shelvesAbove(scene, piece), (shelf, withinMm) =>
      solidDistanceMm(piece.solid, shelf.solid, withinMm),
    ),
    { kind: "lid", distanceMm: scene.depthMm - piece.solid.topMm, leastMm: rules.lidMm, to: "the lid", place: chamber },
    ...nearest("probe", rules.probeMm, scene.probes, (probe, withinMm) =>
      solidDistanceMm(piece.solid, probe.solid, withinMm),
    ),
    ...nearest("spyhole", rules.spyholeMm, scene.mouths, ({ mouth }, withinMm) =>
      mouthDistanceMm(piece.solid, mouth, withinMm),
    ),
  ];
}

/** A neighbour by its kind alone: for a label the number says nothing. */
function wareName(others: readonly PieceInPlace[], place: Place): string {
  return others.find((each) => each.place === place)?.ware.name ?? "";
}

function nearest<Thing extends { readonly name: string; readonly place: Place }>(
  kind: Clearance["kind"],
  leastMm: number,
  things: readonly Thing[],
  distanceMm: (thing: Thing, withinMm: number) => number,
): Clearance[] {
  let best: Clearance | null = null;
  for (const thing of things) {
    const found = distanceMm(thing, best?.distanceMm ?? Number.POSITIVE_INFINITY);
    if (!best || found < best.distanceMm)
      best = { kind, distanceMm: found, leastMm, to: thing.name, place: thing.place };
  }
  return best ? [best] : [];
}
