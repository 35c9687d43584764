import type { ConvexRegion } from "../../kiln/convex-region.ts";
import type { Post } from "../../kiln/furniture.ts";
import type { Level, PlacedPost } from "../load-plan.ts";
import { postPrism } from "../solids/furniture-solids.ts";
import { marginInsideMm, planDistanceMm } from "../solids/plan-distance.ts";
import { type Solid, solidOf, type Upright, widestMm } from "../solids/upright.ts";
import { CLEARANCE_TOLERANCE_MM, type Place } from "./broken.ts";

/** What a post needs to know of a shelf. */
interface Slab {
  readonly level: number;
  readonly region: ConvexRegion;
  readonly undersideMm: number;
  readonly topMm: number;
  readonly solid: Solid;
}

/** A post, or two stacked, where the plan puts it. Millimetres above the floor. */
export interface PostInPlace {
  /** The level it carries. */
  readonly level: number;
  readonly post: number;
  readonly x: number;
  readonly y: number;
  /** The level whose shelf it stands on; null where it stands on the floor. */
  readonly standsOn: number | null;
  readonly baseMm: number;
  readonly topMm: number;
  readonly heightsMm: readonly number[];
  /** Its stack, lowest first. */
  readonly stack: readonly Upright[];
  readonly solid: Solid;
  /** "post 1 under level 3" */
  readonly name: string;
  readonly place: Place;
}

/**
 * Every post of a plan. A post stands on the highest shelf beneath the one it carries that its foot is over, else on
 * the floor: levels need not be in order, and two half shelves may stand at two heights.
 */
export function postsInPlace(
  stock: readonly Post[],
  levels: readonly Level[],
  shelves: readonly Slab[],
): PostInPlace[] {
  const kinds = new Map<number, PostKind>();
  return levels.flatMap((level, index) =>
    level.posts.map((post, i) => {
      const stackFrom = (baseMm: number): Upright[] => {
        let bottom = baseMm;
        return post.heightsMm.map((height) => {
          const kind = kinds.get(height) ?? postKind(stock, height);
          kinds.set(height, kind);
          bottom += height;
          return postPrism(kind, post.xMm, post.yMm, post.turnDeg, bottom - height, bottom);
        });
      };
      return postInPlace(post, index, i, stackFrom, shelves);
    }),
  );
}

function postInPlace(
  post: PlacedPost,
  level: number,
  index: number,
  stackFrom: (baseMm: number) => Upright[],
  shelves: readonly Slab[],
): PostInPlace {
  const under = shelfBeneath(stackFrom(0)[0]!, level, shelves);
  const baseMm = under?.topMm ?? 0;
  const stack = stackFrom(baseMm);
  return {
    level,
    post: index,
    x: post.xMm,
    y: post.yMm,
    standsOn: under?.level ?? null,
    baseMm,
    topMm: stack.at(-1)!.rings.at(-1)![0],
    heightsMm: post.heightsMm,
    stack,
    solid: solidOf(post.xMm, post.yMm, stack),
    name: `post ${index + 1} under level ${level + 1}`,
    place: { kind: "post", level, post: index },
  };
}

function shelfBeneath(foot: Upright, level: number, shelves: readonly Slab[]): Slab | null {
  const carried = shelves[level]!;
  let best: Slab | null = null;
  let bestMargin = Number.NEGATIVE_INFINITY;
  for (const shelf of shelves) {
    if (shelf.level === level || shelf.topMm >= carried.undersideMm - CLEARANCE_TOLERANCE_MM) continue;
    if (best && shelf.topMm < best.topMm - CLEARANCE_TOLERANCE_MM) continue;
    const slab = shelf.solid.parts[0]!;
    const apart = planDistanceMm(foot.core, slab.core) - widestMm(foot) - widestMm(slab);
    if (apart >= -CLEARANCE_TOLERANCE_MM) continue;
    // Two halves at one height: the one that holds more of the foot.
    const margin = marginInsideMm(foot.core, widestMm(foot), shelf.region);
    if (best && shelf.topMm <= best.topMm + CLEARANCE_TOLERANCE_MM && margin <= bestMargin) continue;
    best = shelf;
    bestMargin = margin;
  }
  return best;
}

type PostKind = Pick<Post, "shape" | "widthMm">;

/**
 * A post of a height as solid. A plan names posts by height alone: where several kinds share it, the widest is taken,
 * square where any is square, so that whichever she picks up keeps the rules. A height she has none of (the stock rule
 * says so) is taken as wide as her widest.
 */
function postKind(stock: readonly Post[], heightMm: number): PostKind {
  const named = stock.filter((post) => sameHeight(post.heightMm, heightMm));
  // A row of which she has none cannot be the one that was used, unless there is no other.
  const owned = named.filter((post) => post.count > 0);
  const alike = owned.length > 0 ? owned : named;
  const kinds = alike.length > 0 ? alike : stock;
  return {
    widthMm: Math.max(...kinds.map((post) => post.widthMm)),
    shape: kinds.some((post) => post.shape === "square") ? "square" : "round",
  };
}

/** Whether two post heights are the same kind of post. */
export const sameHeight = (aMm: number, bMm: number): boolean => Math.abs(aMm - bMm) <= CLEARANCE_TOLERANCE_MM;
