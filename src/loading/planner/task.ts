import { type ConvexRegion, chamberRegion } from "../../kiln/convex-region.ts";
import { type ProbeLine, probeLine, type SpyholeMouth, spyholeMouth } from "../../kiln/wall-fittings.ts";
import type { LoadRequest } from "../load-request.ts";
import { type PieceKind, pieceKind } from "../packing/piece-kind.ts";
import { type PostKind, postKinds, type StackHeight, stackHeights } from "./post-stacks.ts";
import { type Seat, shelfSeats } from "./seat.ts";

/** A load request as the search wants it: everything measured once, kinds by number. */
export interface LoadTask {
  readonly request: LoadRequest;
  readonly kinds: readonly PieceKind[];
  /** How many of each kind wait. */
  readonly counts: readonly number[];
  /** What one piece of each kind is worth to the search: a piece that must fire outweighs all that need not. */
  readonly worth: readonly number[];
  /** Kinds by worth for the room they take, best first. */
  readonly order: readonly number[];
  readonly seats: readonly Seat[];
  readonly posts: readonly PostKind[];
  readonly widestPostMm: number;
  readonly heights: readonly StackHeight[];
  readonly walls: ConvexRegion;
  readonly probes: readonly ProbeLine[];
  readonly mouths: readonly SpyholeMouth[];
}

/** Measures a request once, for the search. */
export function loadTask(request: LoadRequest): LoadTask {
  const { kiln, furniture, rules, ware } = request;
  const all = ware.reduce((sum, each) => sum + each.value * each.count, 0);
  const posts = postKinds(furniture.posts);
  const kinds = ware.map((each) => pieceKind(each, rules.gapMm));
  // A worthless piece still counts for a little: an emptier shelf is no better.
  const worth = ware.map((each) => Math.max(each.value, 1e-3) + (each.mustFire ? all + 1 : 0));
  const density = kinds.map((kind, k) => (worth[k] as number) / kind.areaMm2);
  return {
    request,
    kinds,
    counts: ware.map((each) => each.count),
    worth,
    order: kinds.map((_, k) => k).sort((a, b) => (density[b] as number) - (density[a] as number)),
    seats: shelfSeats(kiln.chamber, furniture.shelves, rules.shelfWallMm),
    posts,
    widestPostMm: Math.max(0, ...posts.map((post) => post.widthMm)),
    heights: stackHeights(posts),
    walls: chamberRegion(kiln.chamber),
    probes: kiln.probes.map((probe) => probeLine(kiln.chamber, probe)),
    mouths: kiln.spyholes.filter((hole) => hole.open).map((hole) => spyholeMouth(kiln.chamber, hole)),
  };
}
