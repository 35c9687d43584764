import type { Chance } from "../../measures/seeded-chance.ts";
import { type Effort, QUICK, THOROUGH } from "../packing/separation.ts";
import type { Columns } from "./columns.ts";
import { LevelLoad } from "./level-load.ts";
import { standingRoom } from "./standing-room.ts";
import type { Structure } from "./structure.ts";
import type { LoadTask } from "./task.ts";

/** A load's pieces and places as plain arrays: what the search remembers of its best. */
export interface LoadSnapshot {
  readonly structure: Structure;
  readonly columns: Columns;
  readonly worth: number;
  readonly levels: readonly { readonly kindOf: Int32Array; readonly places: Float64Array }[];
}

// Beyond this share of a shelf nothing has ever been parted; the search learns a nearer limit for each level.
const NEVER_FULLER = 0.93;

/**
 * One structure being filled: first everything that fits, best worth for its room first; then large neighbourhoods: put one
 * in, put one in for one or two others, move pieces between levels, shift the posts round.
 */
export class LoadSearch {
  readonly levels: LevelLoad[];
  worth = 0;
  readonly waiting: Int32Array;
  private readonly refused: Float64Array;
  private columns: Columns;
  private readonly task: LoadTask;
  readonly structure: Structure;
  private readonly chance: Chance;

  constructor(task: LoadTask, structure: Structure, columns: Columns, chance: Chance) {
    this.task = task;
    this.structure = structure;
    this.columns = columns;
    this.chance = chance;
    this.waiting = Int32Array.from(task.counts);
    this.levels = structure.levels.map(
      (level, i) => new LevelLoad(task, level, standingRoom(task, structure, columns, i), columns, chance),
    );
    this.refused = new Float64Array(this.levels.length).fill(NEVER_FULLER);
  }

  /** Work done so far by all levels. */
  get work(): number {
    return this.levels.reduce((sum, level) => sum + level.work, 0);
  }

  /** Fills the empty levels: kinds by worth for their room, each on the lowest clear height that admits it. */
  fill(shouldStop: () => boolean): void {
    for (const kind of this.task.order) {
      let misses = 0;
      while ((this.waiting[kind] as number) > 0 && misses === 0 && !shouldStop()) {
        if (!this.levelsFor(kind).some((level) => this.change(level, [], [kind], QUICK))) misses++;
      }
    }
  }

  /** One move of the search. Returns true where the load changed. */
  step(): boolean {
    const dice = this.chance.next();
    if (dice < 0.3) return this.putOneIn();
    if (dice < 0.72) return this.exchange();
    if (dice < 0.86) return this.moveBetween();
    if (dice < 0.9) return this.shiftPosts();
    return this.startAfresh();
  }

  snapshot(): LoadSnapshot {
    return {
      structure: this.structure,
      columns: this.columns,
      worth: this.worth,
      levels: this.levels.map((level) => ({
        kindOf: level.kindOf.slice(0, level.count),
        places: level.places.slice(0, 3 * level.count),
      })),
    };
  }

  /** Levels that admit a kind, lowest clear height first, and of those alike the emptiest. */
  private levelsFor(kind: number): number[] {
    const fits = this.levels.map((_, i) => i).filter((i) => this.admits(i, kind));
    const clear = (i: number): number => (this.structure.levels[i] as Structure["levels"][number]).clearMm;
    return fits.sort((a, b) => clear(a) - clear(b) || this.fullness(a) - this.fullness(b));
  }

  private admits = (level: number, kind: number): boolean => (this.levels[level] as LevelLoad).admits[kind] === 1;

  private fullness(level: number, moreMm2 = 0): number {
    const area = (this.structure.levels[level] as Structure["levels"][number]).seat.areaMm2;
    return ((this.levels[level] as LevelLoad).filledMm2 + moreMm2) / area;
  }

  private areaOf = (kind: number): number => (this.task.kinds[kind] as LoadTask["kinds"][number]).areaMm2;
  private worthOf = (kind: number): number => this.task.worth[kind] as number;

  /** Changes one level, where the fullness gives it a chance; keeps the books. */
  private change(level: number, without: readonly number[], added: readonly number[], effort: Effort): boolean {
    const load = this.levels[level] as LevelLoad;
    const taken = without.map((i) => load.kindOf[i] as number);
    const more =
      added.reduce((sum, kind) => sum + this.areaOf(kind), 0) - taken.reduce((sum, kind) => sum + this.areaOf(kind), 0);
    const fullness = this.fullness(level, more);
    const limit = this.refused[level] as number;
    // Past what was refused before it is tried now and then, less and less likely the fuller it would be.
    if (fullness > limit && this.chance.next() > Math.exp(-(fullness - limit) * 60)) return false;
    const widestFirst = [...added].sort((a, b) => this.areaOf(b) - this.areaOf(a));
    if (!load.tryChange(without, widestFirst, effort, this.chance)) {
      if (fullness < limit) this.refused[level] = Math.max(fullness, limit - 0.004);
      return false;
    }
    if (fullness > limit) this.refused[level] = Math.min(NEVER_FULLER, fullness + 0.01);
    for (const kind of taken) this.account(kind, -1);
    for (const kind of added) this.account(kind, 1);
    return true;
  }

  private account(kind: number, direction: 1 | -1): void {
    this.waiting[kind] = (this.waiting[kind] as number) - direction;
    this.worth += direction * this.worthOf(kind);
  }

  /** A waiting kind, the worthier for its room the likelier; -1 where none waits. */
  private someWaiting(fits: (kind: number) => boolean): number {
    let chosen = -1;
    let total = 0;
    for (const kind of this.task.order) {
      if ((this.waiting[kind] as number) === 0 || !fits(kind)) continue;
      const weight = Math.min(50, this.worthOf(kind) / this.areaOf(kind) / this.typicalWorth) ** 2 + 0.05;
      total += weight;
      if (this.chance.next() * total < weight) chosen = kind;
    }
    return chosen;
  }

  private get typicalWorth(): number {
    const middle = this.task.order[this.task.order.length >> 1] as number;
    return this.worthOf(middle) / this.areaOf(middle);
  }

  private someLevel = (): number => this.chance.below(this.levels.length);

  private putOneIn(): boolean {
    const kind = this.someWaiting((each) => this.levels.some((_, i) => this.admits(i, each)));
    if (kind < 0) return false;
    const fits = this.levelsFor(kind);
    return this.change(fits[this.chance.below(fits.length)] as number, [], [kind], QUICK);
  }

  /** Takes one or two off a level and sets others down there, never worth less together. */
  private exchange(): boolean {
    const level = this.someLevel();
    const load = this.levels[level] as LevelLoad;
    if (load.count === 0) return false;
    const without = [this.chance.below(load.count)];
    if (this.chance.next() < 0.45 && load.count > 1) {
      const second = this.chance.below(load.count);
      if (!without.includes(second)) without.push(second);
    }
    const lost = without.reduce((sum, i) => sum + this.worthOf(load.kindOf[i] as number), 0);
    const freed = without.reduce((sum, i) => sum + this.areaOf(load.kindOf[i] as number), 0);
    const room =
      Math.max(0, ((this.refused[level] as number) + 0.02 - this.fullness(level)) * this.levelArea(level)) + freed;
    const added: number[] = [];
    let gained = 0;
    let used = 0;
    for (let n = 0; n < 5; n++) {
      const kind = this.someWaiting(
        (each) =>
          this.admits(level, each) &&
          used + this.areaOf(each) <= room &&
          added.filter((other) => other === each).length < (this.waiting[each] as number),
      );
      if (kind < 0) break;
      added.push(kind);
      gained += this.worthOf(kind);
      used += this.areaOf(kind);
    }
    // A fair exchange is no loss: it stirs the load. The same kinds back again are not worth the work.
    if (gained < lost - 1e-9 || added.length === 0) return false;
    return this.change(level, without, added, QUICK);
  }

  private levelArea = (level: number): number =>
    (this.structure.levels[level] as Structure["levels"][number]).seat.areaMm2;

  /** Moves a piece to another level, or lets two change places, then tries to fill the room it left. */
  private moveBetween(): boolean {
    if (this.levels.length < 2) return false;
    const from = this.someLevel();
    const to = (from + 1 + this.chance.below(this.levels.length - 1)) % this.levels.length;
    const source = this.levels[from] as LevelLoad;
    const target = this.levels[to] as LevelLoad;
    if (source.count === 0) return false;
    const moved = this.chance.below(source.count);
    const kind = source.kindOf[moved] as number;
    if (!this.admits(to, kind)) return false;
    if (this.chance.next() < 0.5) {
      if (!this.change(to, [], [kind], QUICK)) return false;
      source.remove(moved);
      this.account(kind, -1);
    } else {
      if (target.count === 0) return false;
      const back = this.chance.below(target.count);
      const other = target.kindOf[back] as number;
      if (other === kind || !this.admits(from, other)) return false;
      const kept = [target.kindOf.slice(), target.places.slice(), target.filledMm2] as const;
      if (!this.change(to, [back], [kind], QUICK)) return false;
      // The books count the moved piece twice for a moment: both trials must hold, or neither.
      if (!this.change(from, [moved], [other], QUICK)) {
        target.kindOf.set(kept[0]);
        target.places.set(kept[1]);
        target.filledMm2 = kept[2];
        this.account(kind, -1);
        this.account(other, 1);
        return false;
      }
    }
    const next = this.someWaiting((each) => this.admits(from, each));
    if (next >= 0) this.change(from, [], [next], QUICK);
    return true;
  }

  /** Sets a whole level down anew with one piece more. */
  private startAfresh(): boolean {
    const level = this.someLevel();
    const kind = this.someWaiting((each) => this.admits(level, each));
    if (kind < 0) return false;
    const fullness = this.fullness(level, this.areaOf(kind));
    if (fullness > (this.refused[level] as number) + 0.03) return false;
    if (!(this.levels[level] as LevelLoad).tryAfresh([kind], THOROUGH, this.chance)) return false;
    this.account(kind, 1);
    return true;
  }

  /** Shifts the three columns round the kiln where every level can still be parted. */
  private shiftPosts(): boolean {
    const columns = this.otherColumns?.(this.chance);
    if (!columns) return false;
    const found: LevelLoad["separation"][] = [];
    for (const [i, level] of this.levels.entries()) {
      const room = standingRoom(this.task, this.structure, columns, i);
      const separation = level.tryRoom(room, columns, QUICK, this.chance);
      if (!separation) return false;
      found.push(separation);
    }
    this.columns = columns;
    for (const [i, level] of this.levels.entries()) level.acceptRoom(found[i] as LevelLoad["separation"], columns);
    return true;
  }

  /** Gives other columns to try; set by whoever knows which are legal. */
  otherColumns: ((chance: Chance) => Columns | null) | null = null;
}
