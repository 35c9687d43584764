import type { Chance } from "../../measures/seeded-chance.ts";
import { type Effort, QUICK, type Separation, THOROUGH } from "../packing/separation.ts";
import { LevelLoad } from "./level-load.ts";
import type { Frame, Stand } from "./stand.ts";
import type { LoadTask } from "./task.ts";

/** A load's pieces and places as plain arrays: what the search remembers of its best. */
export interface LoadSnapshot {
  readonly frame: Frame;
  readonly worth: number;
  readonly levels: readonly {
    readonly kindOf: Int32Array;
    readonly places: Float64Array;
    /** The means to part pieces where the columns stand as they do here. */
    readonly room: Separation;
  }[];
}

// Of exchanges that would gain, this share is searched on for so many hops where the pieces do not part at once. Measured on
// the benchmark's loads: none of this costs two parts in a hundred of the value, more of it gains nothing.
const HOP_SHARE = 0.5;
const HOPS = 30;
// How full a shelf is hoped to get, to begin with, and beyond what share nothing has ever been parted. Each level's own
// limit is learned from what it refuses and takes.
const HOPED_FULL = 0.82;
const NEVER_FULLER = 0.93;
// A cycle of the search begins willing to lose this share of a usual piece's worth for a change of scene, and ends
// unwilling to lose anything. Cycles are counted in work, so that the search has no need to know when it will end.
const WILLING_TO_LOSE = 0.5;
const FIRST_CYCLE_WORK = 60_000;
const CYCLE_GROWTH = 1.3;

/**
 * One frame of shelves and posts being filled: first everything that fits, best worth for its room first; then large neighbourhoods: put one
 * in, put one in for one or two others, move pieces between levels, shift the posts round.
 */
export class LoadSearch {
  readonly levels: LevelLoad[];
  worth = 0;
  /** The best load met so far. */
  best: LoadSnapshot | null = null;
  /** True once that load leaves out nothing that could stand on any of these levels: there is no better one. */
  complete = false;
  readonly waiting: Int32Array;
  private readonly refused: Float64Array;
  private frame: Frame;
  private readonly task: LoadTask;
  private readonly chance: Chance;

  constructor(task: LoadTask, frame: Frame, chance: Chance) {
    this.task = task;
    this.frame = frame;
    this.chance = chance;
    this.waiting = Int32Array.from(task.counts);
    this.levels = frame.stands.map((stand) => new LevelLoad(task, stand, chance));
    for (const { held } of frame.stands) for (const kind of held.kindOf) this.account(kind, 1);
    this.refused = new Float64Array(this.levels.length).fill(HOPED_FULL);
    this.usualWorth = usualWorth(task);
  }

  /** Work done so far by all levels. */
  get work(): number {
    return this.levels.reduce((sum, level) => sum + level.work, 0);
  }

  private readonly usualWorth: number;
  private cycleBegan = 0;
  private cycleWork = FIRST_CYCLE_WORK;

  /** Fills the empty levels: kinds by worth for their room, each on the lowest clear height that admits it. */
  fill(shouldStop: () => boolean): void {
    for (const kind of this.task.order) {
      let misses = 0;
      while ((this.waiting[kind] as number) > 0 && misses === 0 && !shouldStop()) {
        if (!this.levelsFor(kind).some((level) => this.change(level, [], [kind], QUICK))) misses++;
      }
    }
  }

  /** Sets pieces down as they stood, all together where they can be parted, else each that can; the others wait. */
  setDown(level: number, pieces: readonly { readonly kind: number; readonly place: readonly number[] }[]): void {
    const load = this.levels[level] as LevelLoad;
    const unused = Int32Array.from(this.waiting);
    const fitting = pieces
      .filter(({ kind }) => {
        if ((unused[kind] as number) === 0 || this.heightOf(kind) > this.stand(level).clearMm) return false;
        unused[kind] = (unused[kind] as number) - 1;
        return true;
      })
      .sort((a, b) => this.worthOf(b.kind) - this.worthOf(a.kind));
    const tries = (some: typeof fitting): boolean => {
      const kinds = some.map(({ kind }) => kind);
      const set = load.trySetDown(
        kinds,
        some.map(({ place }) => place),
        QUICK,
        this.chance,
      );
      if (set) for (const kind of kinds) this.account(kind, 1);
      return set;
    };
    if (!tries(fitting)) for (const each of fitting) tries([each]);
  }

  /** One move of the search. Returns true where it found the best load yet. */
  step(): boolean {
    if (this.work - this.cycleBegan > this.cycleWork) this.beginCycle();
    const dice = this.chance.next();
    if (dice < 0.25) this.putOneIn();
    else if (dice < 0.78) this.exchange();
    else if (dice < 0.9) this.moveBetween();
    else if (dice < 0.94) this.shiftPosts();
    else this.startAfresh();
    return this.noteBest();
  }

  /** Remembers the present load where it is the best yet. */
  noteBest(): boolean {
    if (this.best && this.worth <= this.best.worth + 1e-9) return false;
    this.best = this.snapshot();
    this.complete = this.waiting.every(
      (count, kind) => count === 0 || !this.levels.some((_, i) => this.admits(i, kind)),
    );
    return true;
  }

  /** Back to the best load, more often than not, and willing to lose again. */
  private beginCycle(): void {
    this.cycleBegan = this.work;
    this.cycleWork *= CYCLE_GROWTH;
    if (this.best && this.worth < this.best.worth - 1e-9 && this.chance.next() < 0.7) this.restore(this.best);
  }

  private restore(load: LoadSnapshot): void {
    this.waiting.set(this.task.counts);
    this.worth = load.worth;
    this.frame = load.frame;
    for (const [i, level] of this.levels.entries()) {
      const { kindOf, places, room } = load.levels[i] as LoadSnapshot["levels"][number];
      level.restore(kindOf, places, room, this.stand(i));
      for (const kind of kindOf) this.waiting[kind] = (this.waiting[kind] as number) - 1;
    }
  }

  /** What the search would lose just now for a change of scene: less toward the end of a cycle. */
  private get willing(): number {
    const left = Math.max(0, 1 - (this.work - this.cycleBegan) / this.cycleWork);
    return -Math.log(1 - this.chance.next()) * WILLING_TO_LOSE * this.usualWorth * left * left;
  }

  snapshot(): LoadSnapshot {
    return {
      frame: this.frame,
      worth: this.worth,
      levels: this.levels.map((level) => ({
        kindOf: level.kindOf.slice(0, level.count),
        places: level.places.slice(0, 3 * level.count),
        room: level.separation,
      })),
    };
  }

  /** Levels that admit a kind, lowest clear height first, and of those alike the emptiest. */
  private levelsFor(kind: number): number[] {
    const fits = this.levels.map((_, i) => i).filter((i) => this.admits(i, kind));
    return fits.sort((a, b) => this.stand(a).clearMm - this.stand(b).clearMm || this.fullness(a) - this.fullness(b));
  }

  private admits = (level: number, kind: number): boolean => (this.levels[level] as LevelLoad).admits[kind] === 1;

  private fullness(level: number, moreMm2 = 0): number {
    return ((this.levels[level] as LevelLoad).filledMm2 + moreMm2) / this.stand(level).areaMm2;
  }

  private stand = (level: number): Stand => this.frame.stands[level] as Stand;
  private heightOf = (kind: number): number => (this.task.kinds[kind] as LoadTask["kinds"][number]).heightMm;
  private areaOf = (kind: number): number => (this.task.kinds[kind] as LoadTask["kinds"][number]).areaMm2;
  private worthOf = (kind: number): number => this.task.worth[kind] as number;

  /** Changes one level, where the fullness gives it a chance; keeps the books. */
  private change(
    level: number,
    without: readonly number[],
    added: readonly number[],
    effort: Effort,
    hops = 0,
  ): boolean {
    const load = this.levels[level] as LevelLoad;
    const taken = without.map((i) => load.kindOf[i] as number);
    const more =
      added.reduce((sum, kind) => sum + this.areaOf(kind), 0) - taken.reduce((sum, kind) => sum + this.areaOf(kind), 0);
    const fullness = this.fullness(level, more);
    const limit = this.refused[level] as number;
    // One piece on a shelf of its own may cover all of it: it stands there if it was admitted.
    const alone = load.count - without.length + added.length === 1;
    // Past what was refused before it is tried now and then, less and less likely the fuller it would be.
    if (!alone && fullness > limit && this.chance.next() > Math.exp(-(fullness - limit) * 60)) return false;
    const widestFirst = [...added].sort((a, b) => this.areaOf(b) - this.areaOf(a));
    if (!load.tryChange(without, widestFirst, effort, hops, this.chance)) {
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
    if (load.count === load.held) return false;
    const without = this.someOf(load);
    const lost = without.reduce((sum, i) => sum + this.worthOf(load.kindOf[i] as number), 0);
    const freed = without.reduce((sum, i) => sum + this.areaOf(load.kindOf[i] as number), 0);
    const room =
      Math.max(0, ((this.refused[level] as number) + 0.02 - this.fullness(level)) * this.stand(level).areaMm2) + freed;
    const added: number[] = [];
    let gained = 0;
    let used = 0;
    for (let n = 0; n < 5; n++) {
      const kind = this.someWaiting(
        (each) =>
          this.admits(level, each) &&
          used + this.areaOf(each) <= room &&
          countOf(added, each) < (this.waiting[each] as number),
      );
      if (kind < 0) break;
      added.push(kind);
      gained += this.worthOf(kind);
      used += this.areaOf(kind);
    }
    // A fair exchange is no loss: it stirs the load. The same kinds back again are not worth the work.
    if (added.length === 0 || gained < lost - 1e-9 - this.willing) return false;
    if (sameKinds(added, without, load.kindOf)) return false;
    const hops = gained > lost + 1e-9 && this.chance.next() < HOP_SHARE ? HOPS : 0;
    return this.change(level, without, added, QUICK, hops);
  }

  /** One to three pieces of a level, mostly neighbours: together they leave room for something wide. */
  private someOf(load: LevelLoad): number[] {
    const free = load.count - load.held;
    const first = load.held + this.chance.below(free);
    const chosen = [first];
    const dice = this.chance.next();
    const wanted = Math.min(free, dice < 0.5 ? 1 : dice < 0.85 ? 2 : 3);
    while (chosen.length < wanted) {
      const anywhere = this.chance.next() < 0.3;
      const next = anywhere ? load.held + this.chance.below(free) : load.nearTo(first, chosen, this.chance);
      if (next >= 0 && !chosen.includes(next)) chosen.push(next);
      else break;
    }
    return chosen;
  }

  /** Moves a piece to another level, or lets two change places, then tries to fill the room it left. */
  private moveBetween(): boolean {
    if (this.levels.length < 2) return false;
    const from = this.someLevel();
    const to = (from + 1 + this.chance.below(this.levels.length - 1)) % this.levels.length;
    const source = this.levels[from] as LevelLoad;
    const target = this.levels[to] as LevelLoad;
    if (source.count === source.held) return false;
    const moved = source.held + this.chance.below(source.count - source.held);
    const kind = source.kindOf[moved] as number;
    if (!this.admits(to, kind)) return false;
    if (this.chance.next() < 0.5) {
      if (!source.canSpare(moved) || !this.change(to, [], [kind], QUICK)) return false;
      source.remove(moved);
      this.account(kind, -1);
    } else {
      if (target.count === target.held) return false;
      const back = target.held + this.chance.below(target.count - target.held);
      const other = target.kindOf[back] as number;
      if (other === kind || !this.admits(from, other)) return false;
      const kept = target.remember();
      if (!this.change(to, [back], [kind], QUICK)) return false;
      // The books count the moved piece twice for a moment: both trials must hold, or neither.
      if (!this.change(from, [moved], [other], QUICK)) {
        target.recall(kept);
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
    const frame = this.frame.shifted?.(this.chance);
    if (!frame) return false;
    const found: Separation[] = [];
    for (const [i, level] of this.levels.entries()) {
      const separation = level.tryStand(frame.stands[i] as Stand, QUICK, this.chance);
      if (!separation) return false;
      found.push(separation);
    }
    this.frame = frame;
    for (const [i, level] of this.levels.entries()) level.acceptStand(this.stand(i), found[i] as Separation);
    return true;
  }
}

function countOf(kinds: readonly number[], kind: number): number {
  let count = 0;
  for (const each of kinds) if (each === kind) count++;
  return count;
}

function sameKinds(added: readonly number[], without: readonly number[], kindOf: Int32Array): boolean {
  if (added.length !== without.length) return false;
  return added.every((kind) => {
    let leaving = 0;
    for (const i of without) if (kindOf[i] === kind) leaving++;
    return leaving === countOf(added, kind);
  });
}

/** The middle worth of the pieces that need not fire, counted one by one. */
function usualWorth(task: LoadTask): number {
  const worths = task.request.ware.flatMap((ware) =>
    ware.mustFire ? [] : new Array<number>(ware.count).fill(ware.value),
  );
  return worths.sort((a, b) => a - b)[worths.length >> 1] ?? 1;
}
