import type { LoadRequest } from "../load-request.ts";
import { type LevelRow, levelRows, slices } from "./level-rows.ts";
import { LevelSetBound, type Part } from "./level-set-bound.ts";
import { type PieceRoom, pieceRoom } from "./piece-room.ts";
import { type BoundLevel, covers, possibleLevels } from "./possible-levels.ts";
import { shelfPlay } from "./shelf-play.ts";

/** A value no legal load can exceed, and why. */
export interface LoadValueBound {
  /** No legal load of the request is worth more. */
  readonly value: number;
  /** What it rests on, for a reader. */
  readonly theorem: string;
  /** How many sets of levels it is the greatest over. */
  readonly levelSets: number;
}

const THEOREM =
  "Over every set of levels that posts, shelves, probes and depth allow, a linear programme bounds the pieces: areas with " +
  "half the gap round them, cells of discs (power diagram, Euler's formula, convexity: src/loading/bound/disc-cells.ts), " +
  "proven packings of equal discs, Groemer's inequality; then branching on whole pieces as far as the work allows.";

/** Numbers touched by the linear programmes before the branching ends with what it has: some 40 ms for 40 pieces. */
const mostWork = (pieces: readonly PieceRoom[]): number =>
  Math.min(150e6, 15e6 + 1e5 * pieces.reduce((sum, piece) => sum + piece.count, 0));

/** A part of all loads, not yet split. */
interface Open {
  readonly value: number;
  /** Null until its programme has been solved: `value` is then the quick bound. */
  readonly split: { readonly column: number; readonly below: number } | null | undefined;
  readonly levels: readonly BoundLevel[];
  readonly set: () => LevelSetBound;
  readonly part: Part | null;
}

/**
 * A rigorous upper bound on what any single load of a request can be worth, whatever shelves, heights, places and turns
 * it uses, as long as it keeps the rules the checker measures. Rules that only take room away (probes and spyholes to ware,
 * balance, alignment) are left out, which can only raise it.
 *
 * @param request a read load request
 */
export function loadValueBound(request: LoadRequest): LoadValueBound {
  const { kiln, furniture, rules } = request;
  const plays = furniture.shelves
    .filter((shelf) => shelf.count > 0)
    .flatMap((shelf) => shelfPlay(kiln.chamber, shelf, rules.shelfWallMm) ?? []);
  const pieces = request.ware.map(pieceRoom);
  const possible = plays.length > 0 ? possibleLevels(request, plays, pieces) : { sets: [], roofed: [], tallestMm: 0 };
  const narrowest = Math.min(...furniture.posts.filter((post) => post.count > 0).map((post) => post.widthMm));
  const cut = slices(pieces, rules.gapMm);
  const known = new Map<string, LevelRow[]>();
  const rowsOf = (level: BoundLevel): LevelRow[] => {
    const key = `${level.shelf} ${level.posts}`;
    const rows =
      known.get(key) ??
      levelRows({ play: plays[level.shelf]!, postMm: level.posts ? narrowest : 0 }, cut, pieces, rules.gapMm);
    known.set(key, rows);
    return rows;
  };
  const admits = (level: BoundLevel, kind: number): boolean =>
    pieces[kind]!.heightMm <= (possible.roofed[kind] ? level.clearMm : possible.tallestMm);
  const open: Open[] = possible.sets.map((levels) => {
    let made: LevelSetBound | null = null;
    const set = (): LevelSetBound => {
      made ??= new LevelSetBound(
        pieces,
        levels.map((level) => ({ admits: (kind: number) => admits(level, kind), rows: rowsOf(level) })),
      );
      return made;
    };
    return {
      value: pouredValue(pieces, levels, (level) => rowsOf(level)[0]!, admits),
      split: undefined,
      levels,
      set,
      part: null,
    };
  });
  const value = branch(open, mostWork(pieces));
  return { value: wholeValue(value, pieces), theorem: THEOREM, levelSets: possible.sets.length };
}

/** Splits the part with the greatest bound, over and over, until that part's answer is whole or the work is done. */
function branch(open: Open[], mostWork: number): number {
  const solved: (readonly BoundLevel[])[] = [];
  let work = 0;
  open.sort((a, b) => a.value - b.value);
  while (open.length > 0) {
    const part = open.pop()!;
    if (part.split === null || work > mostWork) return part.value;
    if (!part.part) {
      // What a roomier set can hold is bounded there.
      if (solved.some((roomy) => covers(roomy, part.levels))) continue;
      solved.push(part.levels);
    }
    for (const each of partsOf(part)) {
      const set = part.set();
      const bound = set.bound(each);
      if (!bound) continue;
      work += bound.work;
      const value = Math.min(part.value, bound.value);
      let at = open.length;
      while (at > 0 && open[at - 1]!.value > value) at--;
      open.splice(at, 0, { ...part, value, split: bound.split, part: each });
    }
  }
  return 0;
}

function partsOf({ part, split, set }: Open): Part[] {
  if (!part || !split) return [set().whole];
  const below = { atLeast: part.atLeast, atMost: part.atMost.slice() };
  below.atMost[split.column] = split.below;
  const above = { atLeast: part.atLeast.slice(), atMost: part.atMost };
  above.atLeast[split.column] = split.below + 1;
  return [below, above];
}

/**
 * The greatest value with the first row of each level alone, pieces in fractions: the worthiest for its room first, onto the
 * lowest level that admits it. Levels admit nested sets of kinds, so no other way brings more.
 */
function pouredValue(
  pieces: readonly PieceRoom[],
  levels: readonly BoundLevel[],
  rowOf: (level: BoundLevel) => LevelRow,
  admits: (level: BoundLevel, kind: number) => boolean,
): number {
  const lowestFirst = [...levels].sort((a, b) => a.clearMm - b.clearMm);
  const left = lowestFirst.map((level) => rowOf(level).most);
  const room = rowOf(levels[0]!).room;
  const order = pieces.map((_, kind) => kind).sort((a, b) => pieces[b]!.value * room[a]! - pieces[a]!.value * room[b]!);
  let value = 0;
  for (const kind of order) {
    const piece = pieces[kind]!;
    let count = piece.count;
    for (let l = 0; l < left.length && count > 0; l++) {
      if (!admits(lowestFirst[l]!, kind)) continue;
      const poured = room[kind] === 0 ? count : Math.min(count, left[l]! / room[kind]!);
      left[l] = left[l]! - poured * room[kind]!;
      count -= poured;
      value += poured * piece.value;
    }
  }
  return value;
}

/** Rounds a bound down to what values of whole units can add up to, where they are such. */
function wholeValue(bound: number, pieces: readonly PieceRoom[]): number {
  for (const perUnit of [1, 2, 4, 10, 20, 100]) {
    if (pieces.every(({ value }) => Math.abs(value * perUnit - Math.round(value * perUnit)) < 1e-9)) {
      return Math.floor(bound * perUnit * (1 + 1e-9) + 1e-6) / perUnit;
    }
  }
  return bound * (1 + 1e-9);
}
