import { type ConvexRegion, chamberRegion, placedRegion, shelfRegion } from "../../src/kiln/convex-region.ts";
import type { Shelf } from "../../src/kiln/furniture.ts";
import { probeLine } from "../../src/kiln/wall-fittings.ts";
import type { LoadRequest } from "../../src/loading/load-request.ts";
import { postPrism, regionPrism, shelfMiddle } from "../../src/loading/solids/furniture-solids.ts";
import { marginInsideMm } from "../../src/loading/solids/plan-distance.ts";
import { lineShape } from "../../src/loading/solids/plan-shape.ts";
import { type Solid, solidDistanceMm, solidOf, type Upright } from "../../src/loading/solids/upright.ts";

// What a potter does with shelves and posts when she loads by eye: every shelf about the kiln's axis, the widest lowest,
// three alike stacks of posts under each, the same three places all the way up.

const SPARE_MM = 0.05;

/** A shelf she can lay in the kiln, about its axis. */
export interface LaidShelf {
  readonly shelf: Shelf;
  readonly turnDeg: number;
  readonly region: ConvexRegion;
}

/** Her posts of one height. */
export interface PostHeap {
  readonly heightMm: number;
  readonly widthMm: number;
  readonly shape: "square" | "round";
  readonly count: number;
}

/** One post, or two stacked, as indexes of heaps, lowest first. */
export interface Stack {
  readonly totalMm: number;
  readonly heaps: readonly number[];
}

/** The three places where posts stand, on every level the same. */
export interface PostPlaces {
  readonly xy: readonly (readonly [x: number, y: number])[];
  readonly turnDeg: readonly number[];
}

/** Every single full shelf that lies in the chamber, widest first. */
export function laidShelves(request: LoadRequest): LaidShelf[] {
  const walls = chamberRegion(request.kiln.chamber);
  const least = request.rules.shelfWallMm + SPARE_MM;
  return request.furniture.shelves
    .filter((shelf) => shelf.shape !== "half-disc")
    .sort((a, b) => shelfMiddle(b).areaMm2 - shelfMiddle(a).areaMm2)
    .flatMap((shelf) => {
      for (let turnDeg = 0; turnDeg < 180; turnDeg += 7.5) {
        const region = placedRegion(shelfRegion(shelf), 0, 0, turnDeg);
        const outline = regionPrism(region, 0, 1);
        const radius = outline.rings[0]![1];
        if (marginInsideMm(outline.core, radius, walls) < least) continue;
        return Array.from({ length: Math.min(shelf.count, 50) }, () => ({ shelf, turnDeg, region }));
      }
      return [];
    });
}

/** Posts by height; where kinds share a height, the widest outline stands for all. */
export function postHeaps(request: LoadRequest): PostHeap[] {
  const heights = [...new Set(request.furniture.posts.map((post) => post.heightMm))].sort((a, b) => a - b);
  return heights.map((heightMm) => {
    const alike = request.furniture.posts.filter((post) => post.heightMm === heightMm);
    return {
      heightMm,
      widthMm: Math.max(...alike.map((post) => post.widthMm)),
      shape: alike.some((post) => post.shape === "square") ? "square" : "round",
      count: alike.reduce((sum, post) => sum + post.count, 0),
    };
  });
}

/** Every height three alike stacks of one or two posts can have, lowest first, single posts before stacked ones. */
export function stacksOf(heaps: readonly PostHeap[]): Stack[] {
  const stacks: Stack[] = [];
  heaps.forEach((low, i) => {
    if (low.count >= 3) stacks.push({ totalMm: low.heightMm, heaps: [i] });
    heaps.forEach((high, j) => {
      const beneath = low.widthMm > high.widthMm || (low.widthMm === high.widthMm && i >= j);
      const enough = i === j ? low.count >= 6 : low.count >= 3 && high.count >= 3;
      if (beneath && enough) stacks.push({ totalMm: low.heightMm + high.heightMm, heaps: [i, j] });
    });
  });
  return stacks.sort((a, b) => a.totalMm - b.totalMm || a.heaps.length - b.heaps.length);
}

/** The widest post of some heaps, square where any is: a stack's footprint. */
export function widestPost(heaps: readonly PostHeap[]): { widthMm: number; shape: "square" | "round" } {
  return {
    widthMm: Math.max(...heaps.map((heap) => heap.widthMm)),
    shape: heaps.some((heap) => heap.shape === "square") ? "square" : "round",
  };
}

/** The probes as solids. */
export function probeSolids(request: LoadRequest): Solid[] {
  return request.kiln.probes.map((probe) => {
    const line = probeLine(request.kiln.chamber, probe);
    const core = lineShape(line.tipX, line.tipY, line.wallX, line.wallY);
    return solidOf(line.tipX, line.tipY, [{ core, rings: [[line.heightMm, 0]] }]);
  });
}

/** True where a shelf with its underside there keeps clear of every probe. */
export function shelfIsClear(request: LoadRequest, laid: LaidShelf, undersideMm: number): boolean {
  const slab = solidOf(0, 0, [regionPrism(laid.region, undersideMm, undersideMm + laid.shelf.thicknessMm)]);
  const least = request.rules.probeMm + SPARE_MM;
  return probeSolids(request).every((probe) => solidDistanceMm(slab, probe, least) >= least);
}

/**
 * Three places at 120°, as far out as a post may stand on every one of the shelves; turned in steps until no post comes
 * near a probe. Null where there are none.
 */
export function postPlaces(
  request: LoadRequest,
  laid: readonly LaidShelf[],
  heaps: readonly PostHeap[],
): PostPlaces | null {
  const { widthMm } = widestPost(heaps);
  const regions = [...new Set(laid.map((each) => each.region))];
  const probes = probeSolids(request);
  const least = request.rules.probeMm + SPARE_MM;
  for (let first = 0; first < 120; first += 5) {
    const xy: [number, number][] = [];
    const turnDeg = [first, first + 120, first + 240];
    for (const angle of turnDeg) {
      const cos = Math.cos((angle * Math.PI) / 180);
      const sin = Math.sin((angle * Math.PI) / 180);
      const stands = (away: number): Upright =>
        postPrism({ widthMm, shape: "square" }, away * cos, away * sin, angle, 0, request.kiln.chamber.depthMm);
      let away = 500;
      while (away > widthMm && !regions.every((region) => marginInsideMm(stands(away).core, 0, region) >= SPARE_MM)) {
        away -= 0.5;
      }
      const post = solidOf(away * cos, away * sin, [stands(away)]);
      if (away <= widthMm || probes.some((probe) => solidDistanceMm(post, probe, least) < least)) break;
      xy.push([Math.round(away * cos * 1000) / 1000, Math.round(away * sin * 1000) / 1000]);
    }
    if (xy.length === 3) return { xy, turnDeg };
  }
  return null;
}
