import { probeLine } from "../../kiln/wall-fittings.ts";
import type { LoadRequest } from "../load-request.ts";
import type { PieceRoom } from "./piece-room.ts";
import type { ShelfPlay } from "./shelf-play.ts";

/** A level some load may have: its kind of shelf, how tall ware may be on it, and whether posts must stand among it. */
export interface BoundLevel {
  /** Index into the shelf kinds. */
  readonly shelf: number;
  /** No piece taller than this stands on it, unless it is one of those that may stand beside the shelf above. */
  readonly clearMm: number;
  /** Three posts stand on it. */
  readonly posts: boolean;
}

/** Every set of levels a load may have, or sets that are each at least as roomy; the top level last, as `covers` wants. */
export interface PossibleLevels {
  readonly sets: readonly (readonly BoundLevel[])[];
  /** For each kind of piece, true where the shelf above is over it wherever it stands, so that heights hold it. */
  readonly roofed: readonly boolean[];
  /** No piece taller than this stands anywhere. */
  readonly tallestMm: number;
}

// What the checker lets pass: heights that add up to within half a millimetre a shelf, clearances to a thousandth.
const HEIGHT_SLACK_MM = 0.5;
const SLACK_MM = 2e-3;
const MOST_LOOKED_AT = 15_000;
const FEW_HEIGHTS = 6;

/**
 * The sets of levels worth bounding.
 *
 * Where every shelf, however shifted, covers the kiln's axis, shelves lie one above another and the axis meets them all.
 * Where moreover no post can stand beside a shelf, each shelf's three posts stand on the next one down, and the heights
 * between are those that one or two posts make. Where that fails heights may be any; where the first fails, or there are
 * too many sets to look at, all shelves are taken to be as tall as the kiln.
 */
export function possibleLevels(
  request: LoadRequest,
  shelves: readonly ShelfPlay[],
  pieces: readonly PieceRoom[],
): PossibleLevels {
  const { rules, kiln } = request;
  const roofMm = kiln.chamber.depthMm - rules.lidMm + SLACK_MM;
  const floorMm = rules.floorAirMm - SLACK_MM;
  const posts = request.furniture.posts.filter((post) => post.count > 0);
  const mostLevels = Math.min(
    Math.floor(posts.reduce((sum, post) => sum + post.count, 0) / 3),
    shelves.reduce((sum, each) => sum + each.shelf.count, 0),
  );
  const unroofed = pieces.map(() => false);
  const thinnest = Math.min(...shelves.map((each) => each.shelf.thicknessMm));
  const tallestMm = roofMm - floorMm - thinnest;
  if (mostLevels === 0) return { sets: [], roofed: unroofed, tallestMm };
  const asTallAsTheKiln = shelves.flatMap((each, shelf) =>
    Array.from({ length: Math.min(each.shelf.count, mostLevels) }, () => ({
      shelf,
      clearMm: tallestMm,
      posts: false,
    })),
  );
  if (!shelves.every((each) => each.shiftMm < each.innerMm))
    return { sets: [asTallAsTheKiln], roofed: unroofed, tallestMm };
  const everywhere = (fits: (on: ShelfPlay, above: ShelfPlay) => boolean): boolean =>
    shelves.every((on) => shelves.every((above) => fits(on, above)));
  const roofed = pieces.map((piece) =>
    everywhere(
      (on, above) => on.farthestAxisMm(piece.widestMm) + on.shiftMm + above.shiftMm <= above.innerMm - SLACK_MM,
    ),
  );
  const heights = [...new Set(pieces.map((piece) => piece.heightMm))].sort((a, b) => a - b);
  const half = Math.min(...posts.map((post) => post.widthMm)) / 2;
  const stacking = { shelves, mostLevels, roofMm, floorMm, headroomMm: rules.headroomMm };
  const postsStandOnShelves = everywhere(
    (on, above) => above.farthestAxisMm(half) + on.shiftMm + above.shiftMm < on.innerMm + half - SLACK_MM,
  );
  const zones = probeZones(request, shelves);
  const sets =
    (postsStandOnShelves ? stacked({ ...stacking, heights, posts: true, rises: stackTotals(request), zones }) : null) ??
    anyHeights(stacking, heights) ??
    anyHeights(stacking, fewer(heights));
  return { sets: sets ?? [asTallAsTheKiln], roofed, tallestMm };
}

/** A few of the heights, the lowest among them: a piece reckoned lower than it is can only stand in more places. */
function fewer(heights: readonly number[]): number[] {
  const step = Math.ceil(heights.length / FEW_HEIGHTS);
  return heights.filter((_, i) => i % step === 0);
}

/** Sets where shelves may lie at any height: each level just as tall as one of the pieces asks. */
function anyHeights(
  stacking: Omit<Stacking, "heights" | "posts" | "rises" | "zones">,
  heights: readonly number[],
): BoundLevel[][] | null {
  const rises = [...new Set([stacking.floorMm, ...heights.map((height) => height + stacking.headroomMm)])];
  return stacked({
    ...stacking,
    heights,
    posts: false,
    rises: rises.sort((a, b) => a - b),
    zones: stacking.shelves.map(() => []),
  });
}

interface Stacking {
  readonly shelves: readonly ShelfPlay[];
  readonly mostLevels: number;
  readonly roofMm: number;
  readonly floorMm: number;
  readonly headroomMm: number;
  /** Heights of pieces that matter, lowest first. */
  readonly heights: readonly number[];
  /** Whether posts surely stand on each level below the top. */
  readonly posts: boolean;
  /** From one shelf's top to the next one's underside, lowest first. */
  readonly rises: readonly number[];
  /** For each kind of shelf, heights between which its top cannot lie. */
  readonly zones: readonly (readonly (readonly [number, number])[])[];
}

function stacked({
  shelves,
  mostLevels,
  roofMm,
  floorMm,
  headroomMm,
  heights,
  posts,
  rises,
  zones,
}: Stacking): BoundLevel[][] | null {
  const lowest = heights[0] ?? 0;
  const classOf = (clearMm: number): number => heights.findLastIndex((height) => height <= clearMm);
  const used = shelves.map(() => 0);
  const seen = new Set<string>();
  const sets = new Map<string, BoundLevel[]>();
  let looked = 0;
  const level = (shelf: number, clearMm: number, withPosts: boolean): BoundLevel => ({
    shelf,
    clearMm: heights[classOf(clearMm)] ?? -1,
    posts: withPosts,
  });
  // `topMm` is the nominal height; the true one may be off by the slack of each shelf so far.
  const grow = (levels: readonly BoundLevel[], topMm: number, own: number): void => {
    const shelvesSoFar = levels.length + (own >= 0 ? 1 : 0);
    if (own >= 0) {
      const top = level(own, roofMm - topMm + HEIGHT_SLACK_MM * shelvesSoFar, false);
      const key = `${keyOf(levels)} ${top.shelf}:${top.clearMm}`;
      // The order of the levels beneath the top does not matter here.
      if (!sets.has(key))
        sets.set(key, [...levels.toSorted((a, b) => a.shelf - b.shelf || b.clearMm - a.clearMm), top]);
    }
    if (shelvesSoFar >= mostLevels) return;
    const slack = HEIGHT_SLACK_MM * (shelvesSoFar + 1);
    for (const [s, next] of shelves.entries()) {
      if (used[s]! >= next.shelf.count) continue;
      const zone = zones[s]!;
      let lastKind = Number.NaN;
      for (const rise of rises) {
        if (own < 0 && rise + HEIGHT_SLACK_MM < floorMm) continue;
        const nextTop = topMm + rise + next.shelf.thicknessMm;
        if (nextTop - slack + lowest > roofMm) break;
        if (zone.some(([from, to]) => nextTop - slack > from && nextTop + slack < to)) continue;
        const clear = rise + HEIGHT_SLACK_MM + SLACK_MM - headroomMm;
        const kind = own < 0 ? -1 : classOf(clear);
        // A higher stack that lets no other kind stand beneath it is only of use past a probe.
        if (kind === lastKind && zones.every((each) => each.length === 0)) continue;
        lastKind = kind;
        const grown = own < 0 ? levels : [...levels, level(own, clear, posts)];
        const key = `${keyOf(grown)} ${s} ${nextTop}`;
        if (seen.has(key)) continue;
        seen.add(key);
        if (++looked > MOST_LOOKED_AT) return;
        used[s] = used[s]! + 1;
        grow(grown, nextTop, s);
        used[s] = used[s]! - 1;
      }
    }
  };
  grow([], 0, -1);
  return looked > MOST_LOOKED_AT ? null : [...sets.values()];
}

/** Levels whatever their order, as a name. */
const keyOf = (levels: readonly BoundLevel[]): string =>
  levels
    .map((each) => `${each.shelf}:${each.clearMm}`)
    .sort()
    .join();

/** Every height that three stacks of one or two posts can share, lowest first. Stock beyond that is not reckoned with. */
function stackTotals(request: LoadRequest): number[] {
  const counts = new Map<number, number>();
  for (const post of request.furniture.posts) {
    if (post.count > 0) counts.set(post.heightMm, (counts.get(post.heightMm) ?? 0) + post.count);
  }
  const singles = [...counts];
  const stacks = singles.map(([height, count]) => ({ totalMm: height, count }));
  singles.forEach(([low, lowCount], i) => {
    singles.slice(i).forEach(([high, highCount], j) => {
      const count = j === 0 ? Math.floor(lowCount / 2) : Math.min(lowCount, highCount);
      stacks.push({ totalMm: low + high, count });
    });
  });
  const alike = (totalMm: number): number =>
    stacks.reduce(
      (sum, each) =>
        sum + (each.totalMm >= totalMm && each.totalMm <= totalMm + 2 * HEIGHT_SLACK_MM + SLACK_MM ? each.count : 0),
      0,
    );
  return [...new Set(stacks.map((each) => each.totalMm))].filter((total) => alike(total) >= 3).sort((a, b) => a - b);
}

/** For each kind of shelf, between which heights its top cannot lie because of a probe, wherever the shelf is shifted. */
function probeZones(request: LoadRequest, shelves: readonly ShelfPlay[]): [number, number][][] {
  const { rules, kiln } = request;
  return shelves.map((each) =>
    kiln.probes.flatMap((probe): [number, number][] => {
      const line = probeLine(kiln.chamber, probe);
      const beside = Math.max(0, Math.hypot(line.tipX, line.tipY) - (each.innerMm - each.shiftMm));
      if (beside >= rules.probeMm) return [];
      const away = Math.sqrt(rules.probeMm ** 2 - beside ** 2) - SLACK_MM;
      return [[line.heightMm - away, line.heightMm + away + each.shelf.thicknessMm]];
    }),
  );
}

/**
 * Whether one set is at least as roomy as another: each level of the second has one of its own in the first, of the same
 * kind of shelf and at least as tall, top level to top level.
 */
export function covers(roomy: readonly BoundLevel[], other: readonly BoundLevel[]): boolean {
  const atLeast = (a: BoundLevel, b: BoundLevel): boolean => a.shelf === b.shelf && a.clearMm >= b.clearMm;
  if (roomy.length < other.length || !atLeast(roomy.at(-1)!, other.at(-1)!)) return false;
  let next = 0;
  for (const level of other.slice(0, -1)) {
    while (next < roomy.length - 1 && roomy[next]!.shelf < level.shelf) next++;
    if (next === roomy.length - 1 || !atLeast(roomy[next++]!, level)) return false;
  }
  return true;
}
