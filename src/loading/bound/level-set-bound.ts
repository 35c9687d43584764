import type { LevelRow } from "./level-rows.ts";
import { type Programme, safeBound, solve } from "./linear-programme.ts";
import type { PieceRoom } from "./piece-room.ts";

/** A level as its bound sees it: which kinds it admits, and every row it keeps. */
export interface RowedLevel {
  readonly admits: (kind: number) => boolean;
  /** The first is always reckoned with; the others where a programme breaks them. */
  readonly rows: readonly LevelRow[];
}

/** Some kinds on some levels held between whole numbers: a part of all loads with these levels. */
export interface Part {
  readonly atLeast: Float64Array;
  readonly atMost: Float64Array;
}

export interface PartBound {
  /** No load of this part is worth more. */
  readonly value: number;
  /** The column to split at, and the whole number beneath its answer; null where the answer is whole already. */
  readonly split: { readonly column: number; readonly below: number } | null;
  readonly work: number;
}

const MOST_PIVOTS = 1000;
const MOST_ROUNDS = 4;
const BROKEN = 1e-6;
const WHOLE = 1e-6;

/** The linear programme of one set of levels: pieces in fractions on levels that admit them, for the greatest value. */
export class LevelSetBound {
  private readonly pieces: readonly PieceRoom[];
  private readonly levels: readonly RowedLevel[];
  private readonly kindOf: number[] = [];
  private readonly levelOf: number[] = [];
  private readonly active: Set<number>[];
  private readonly gains: Float64Array;
  private readonly levelRows: Map<number, Float64Array>[];
  private readonly countRows: { readonly kind: number; readonly row: Float64Array }[] = [];

  constructor(pieces: readonly PieceRoom[], levels: readonly RowedLevel[]) {
    this.pieces = pieces;
    this.levels = levels;
    this.active = levels.map(() => new Set([0]));
    pieces.forEach((piece, kind) => {
      if (piece.value <= 0) return;
      levels.forEach((level, l) => {
        if (!level.admits(kind) || level.rows.some((row) => row.room[kind]! > row.most)) return;
        this.kindOf.push(kind);
        this.levelOf.push(l);
      });
    });
    this.gains = Float64Array.from(this.kindOf, (kind) => pieces[kind]!.value);
    this.levelRows = levels.map(() => new Map());
    for (const kind of new Set(this.kindOf)) {
      const row = new Float64Array(this.kindOf.length);
      for (let j = this.kindOf.indexOf(kind); this.kindOf[j] === kind; j++) row[j] = 1;
      this.countRows.push({ kind, row });
    }
  }

  get whole(): Part {
    const atMost = Float64Array.from(this.kindOf, (kind) => this.pieces[kind]!.count);
    return { atLeast: new Float64Array(atMost.length), atMost };
  }

  /** The bound of a part; null where no load can be in it. */
  bound(part: Part): PartBound | null {
    let value = Number.POSITIVE_INFINITY;
    let work = 0;
    for (let round = 0; ; round++) {
      const programme = this.programme(part);
      if (!programme) return null;
      const spare = part.atMost.map((most, j) => most - part.atLeast[j]!);
      const { answer, prices, work: done } = solve(programme, MOST_PIVOTS);
      work += done;
      const kept = part.atLeast.reduce((sum, count, j) => sum + count * this.gains[j]!, 0);
      value = Math.min(value, kept + safeBound(programme, prices, spare));
      const counts = answer.map((count, j) => count + part.atLeast[j]!);
      if (round < MOST_ROUNDS && this.activateBroken(counts)) continue;
      return { value, split: this.splitAt(counts), work };
    }
  }

  /** Rows of the levels, of the kinds' counts, and of counts held below what waits; what is surely there taken off first. */
  private programme({ atLeast, atMost }: Part): Programme | null {
    const rows: Float64Array[] = [];
    const most: number[] = [];
    const columns = this.kindOf.length;
    const add = (row: Float64Array, limit: number): boolean => {
      let left = limit;
      for (let j = 0; j < columns; j++) if (atLeast[j]! > 0) left -= row[j]! * atLeast[j]!;
      if (left < -BROKEN * limit) return false;
      rows.push(row);
      most.push(Math.max(0, left));
      return true;
    };
    for (const [l, active] of this.active.entries()) {
      for (const r of active) {
        const row = this.levelRow(l, r);
        if (!add(row, 1)) return null;
      }
    }
    for (const { kind, row } of this.countRows) if (!add(row, this.pieces[kind]!.count)) return null;
    for (let j = 0; j < columns; j++) {
      if (atMost[j]! >= this.pieces[this.kindOf[j]!]!.count) continue;
      const row = new Float64Array(columns);
      row[j] = 1;
      if (!add(row, atMost[j]!)) return null;
    }
    return { rows, most, gains: this.gains };
  }

  private levelRow(l: number, r: number): Float64Array {
    const known = this.levelRows[l]!.get(r);
    if (known) return known;
    const { room, most } = this.levels[l]!.rows[r]!;
    const row = new Float64Array(this.kindOf.length);
    for (let j = 0; j < row.length; j++) if (this.levelOf[j] === l) row[j] = room[this.kindOf[j]!]! / most;
    this.levelRows[l]!.set(r, row);
    return row;
  }

  /** Reckons from now on with each level's most broken row; false where none is. */
  private activateBroken(counts: Float64Array): boolean {
    let any = false;
    for (const [l, level] of this.levels.entries()) {
      let worst = -1;
      let most = 1 + BROKEN;
      level.rows.forEach((row, r) => {
        if (this.active[l]!.has(r)) return;
        let sum = 0;
        for (let j = 0; j < counts.length; j++) {
          if (counts[j]! > 0 && this.levelOf[j] === l) sum += row.room[this.kindOf[j]!]! * counts[j]!;
        }
        if (sum / row.most <= most) return;
        most = sum / row.most;
        worst = r;
      });
      if (worst < 0) continue;
      this.active[l]!.add(worst);
      any = true;
    }
    return any;
  }

  /** The column whose fraction is worth most. */
  private splitAt(counts: Float64Array): PartBound["split"] {
    let split: PartBound["split"] = null;
    let most = 0;
    counts.forEach((count, column) => {
      const below = Math.floor(count + WHOLE);
      const part = count - below;
      const worth = Math.min(part, 1 - part) * this.gains[column]!;
      if (part <= WHOLE || worth <= most) return;
      most = worth;
      split = { column, below };
    });
    return split;
  }
}
