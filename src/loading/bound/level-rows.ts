import { type CellPrices, cellMm2, cellsAtMostMm2 } from "./disc-cells.ts";
import { atMostFit, atMostIn, surelyFit } from "./equal-discs.ts";
import { discAtMm, outlineAreaMm2, type PieceRoom } from "./piece-room.ts";
import type { ShelfPlay } from "./shelf-play.ts";

/** A limit that every legal level of one sort keeps: the sum of `room` over its pieces is at most `most`. */
export interface LevelRow {
  /** One number a kind of piece, never below zero. */
  readonly room: Float64Array;
  readonly most: number;
}

/** What the rows of a level depend on. */
export interface LevelSort {
  readonly play: ShelfPlay;
  /** The narrowest post, where three surely stand among the ware; else 0. */
  readonly postMm: number;
}

/** Pieces measured at one height above the shelf. */
export interface Slice {
  /** Radius of each kind's disc there, half the gap included; 0 where it is lower than that. */
  readonly discMm: Float64Array;
  readonly outlineMm2: Float64Array;
  /** Radii of further discs that lie in each kind's arms. */
  readonly armsMm: readonly (readonly number[])[];
}

const MOST_SLICES = 4;

/** Heights at which pieces are compared: the shelf's face, and more where profiles or cookies make one piece reach over another. */
export function slices(pieces: readonly PieceRoom[], gapMm: number): Slice[] {
  const heights = new Set<number>([0]);
  for (const { solid } of pieces) for (const [height] of solid.rings) heights.add(height);
  const plain = pieces.every(
    ({ solid }) => !solid.cookie && solid.rings.every(([, radius]) => radius === solid.rings[0]![1]),
  );
  const sorted = [...heights].sort((a, b) => a - b);
  const step = Math.max(1, Math.ceil(sorted.length / MOST_SLICES));
  const chosen = plain ? [0] : sorted.filter((_, i) => i % step === 0);
  return chosen.map((height) => ({
    discMm: Float64Array.from(pieces, (piece) => discAtMm(piece, height, gapMm)),
    outlineMm2: Float64Array.from(pieces, (piece) => outlineAreaMm2(piece, height, gapMm)),
    armsMm: pieces.map((piece) => armDiscs(piece, height, gapMm)),
  }));
}

/** For each arm the largest disc in its end that keeps off the body's disc. Two arms' discs may meet: then one alone. */
function armDiscs(piece: PieceRoom, heightMm: number, gapMm: number): number[] {
  const body = discAtMm(piece, heightMm, gapMm);
  if (body === 0) return [];
  const discs = piece.solid.stadiums.flatMap((arm) => {
    const end = arm.radiusMm + gapMm / 2;
    const radius = Math.min(end, (arm.lengthMm + end - body) / 2);
    return radius > 0 ? [{ radius, away: arm.lengthMm + end - radius, angle: arm.angle }] : [];
  });
  const [a, b] = discs;
  if (!a || !b) return discs.map((each) => each.radius);
  const apart = Math.hypot(
    a.away * Math.cos(a.angle) - b.away * Math.cos(b.angle),
    a.away * Math.sin(a.angle) - b.away * Math.sin(b.angle),
  );
  return apart >= a.radius + b.radius ? [a.radius, b.radius] : [Math.max(a.radius, b.radius)];
}

/** Outlines grown by half the gap do not overlap, and lie on the shelf grown by half the gap. */
export function areaRow({ play, postMm }: LevelSort, slice: Slice, gapMm: number): LevelRow {
  const grown = play.areaMm2 + (play.perimeterMm * gapMm) / 2 + (Math.PI * gapMm * gapMm) / 4;
  // Posts may stand close together, so their grown outlines may overlap: the Brunn–Minkowski inequality bounds their union.
  const post = (postMm * postMm * Math.PI) / 4;
  const posts = post === 0 ? 0 : (Math.sqrt(3 * post) + (Math.sqrt(Math.PI) * gapMm) / 2) ** 2;
  return { room: slice.outlineMm2, most: Math.max(0, grown - posts) };
}

/** The radius of a disc that holds the shelf and half the gap round it. */
export const outerMm = (play: ShelfPlay, gapMm: number): number => play.farthestAxisMm(0) + gapMm / 2;

/** The theorem of disc-cells.ts for bodies, arms' ends and posts together; any of them may be left out. */
export function cellRow({ postMm }: LevelSort, slice: Slice, prices: CellPrices): LevelRow {
  const known = new Map<number, number>();
  const cell = (radius: number): number => {
    const found = known.get(radius) ?? cellMm2(radius, prices);
    known.set(radius, found);
    return found;
  };
  const posts = postMm === 0 ? 0 : 3 * Math.max(0, cell(postMm / 2));
  const most = cellsAtMostMm2(prices) - posts;
  const room = slice.discMm.map((disc, k) => {
    if (disc === 0) return 0;
    const arms = slice.armsMm[k]!.reduce((sum, radius) => sum + Math.max(0, cell(radius)), 0);
    // A piece alone on the shelf is outside the theorem.
    return Math.max(0, Math.min(cell(disc) + arms, most));
  });
  return { room, most };
}

/** Discs of one radius put in place of all pieces at least as wide: one for each, or as many as surely fit in its disc. */
export function countRow({ play }: LevelSort, slice: Slice, gapMm: number, radiusMm: number): LevelRow {
  const shelf = play.shelf.shape === "disc" ? atMostFit(outerMm(play, gapMm) / radiusMm) : Number.POSITIVE_INFINITY;
  const inward = Math.max(0, radiusMm - gapMm / 2);
  const most = Math.min(shelf, middlesAtMost(play, inward, radiusMm));
  return { room: slice.discMm.map((disc) => surelyFit(disc / radiusMm)), most };
}

/** The checker lets this much pass an edge. */
const ROUND_MM = 1e-3;

function middlesAtMost(play: ShelfPlay, inwardMm: number, radiusMm: number): number {
  const { shelf } = play;
  switch (shelf.shape) {
    case "disc": {
      const radius = shelf.diameterMm / 2 - inwardMm;
      return radius < -ROUND_MM ? 0 : atMostIn(Math.PI * radius * radius, 2 * Math.PI * radius, radiusMm);
    }
    case "polygon": {
      const inner = shelf.acrossFlatsMm / 2 - inwardMm;
      const tan = Math.tan(Math.PI / shelf.sides);
      return inner < -ROUND_MM
        ? 0
        : atMostIn(shelf.sides * inner * inner * tan, 2 * shelf.sides * inner * tan, radiusMm);
    }
    case "rectangle": {
      const x = shelf.widthMm - 2 * inwardMm;
      const y = shelf.lengthMm - 2 * inwardMm;
      return x < -ROUND_MM || y < -ROUND_MM ? 0 : atMostIn(x * y, 2 * (x + y), radiusMm);
    }
    case "half-disc":
      return atMostIn(play.areaMm2, play.perimeterMm, radiusMm);
  }
}

// Prices to try, in shares of the discs' mean square radius: around what is best for equal discs from 3 to 60 on a shelf.
const SIDE_PRICES = [0.03, 0.07, 0.11, 0.14, 0.18, 0.24];
const EDGE_PRICES = [0.2, 0.3, 0.4, 0.45, 0.5, 0.6, 0.8];
const MOST_COUNTED_RADII = 10;
// What the checker's thousandth of a millimetre and the arithmetic may give away, as a share: a piece exactly as wide as
// its shelf must not be reckoned off it.
const ROUNDING = 5e-5;
const LIKELY_SHELVES = 4;

/** Every row a level of one sort keeps. The first is the area's. */
export function levelRows(
  sort: LevelSort,
  cut: readonly Slice[],
  pieces: readonly PieceRoom[],
  gapMm: number,
): LevelRow[] {
  const rows: LevelRow[] = cut.map((slice) => areaRow(sort, slice, gapMm));
  const radiusMm = outerMm(sort.play, gapMm);
  for (const slice of cut) {
    const meanSquare = usualSquareMm2(slice, pieces, sort.play);
    if (meanSquare === 0) continue;
    for (const side of SIDE_PRICES) {
      for (const edge of EDGE_PRICES) {
        rows.push(cellRow(sort, slice, { radiusMm, sideMm2: side * meanSquare, edgeMm2: edge * meanSquare }));
      }
    }
    const radii = [...new Set(slice.discMm)].filter((radius) => radius > 0).sort((a, b) => a - b);
    const step = Math.ceil(radii.length / MOST_COUNTED_RADII);
    rows.push(...radii.filter((_, i) => i % step === 0).map((radius) => countRow(sort, slice, gapMm, radius)));
  }
  const [first, ...others] = rows.map((row) => ({ room: row.room, most: row.most * (1 + ROUNDING) }));
  return [first!, ...others.filter((row) => row.most > 0)];
}

/** The mean square radius of the pieces a load is likely to hold: the worthiest for their room, some four shelves of them. */
function usualSquareMm2(slice: Slice, pieces: readonly PieceRoom[], play: ShelfPlay): number {
  const kinds = pieces.map((_, kind) => kind).filter((kind) => slice.discMm[kind]! > 0);
  kinds.sort((a, b) => pieces[b]!.value * slice.outlineMm2[a]! - pieces[a]!.value * slice.outlineMm2[b]!);
  let left = LIKELY_SHELVES * play.areaMm2;
  let count = 0;
  let squares = 0;
  for (const kind of kinds) {
    if (left <= 0) break;
    const some = Math.min(pieces[kind]!.count, left / slice.outlineMm2[kind]!);
    left -= some * slice.outlineMm2[kind]!;
    count += some;
    squares += some * slice.discMm[kind]! ** 2;
  }
  return count === 0 ? 0 : squares / count;
}
