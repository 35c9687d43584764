import { shelfMassKg } from "../../kiln/shelf-mass.ts";
import type { Chance } from "../../measures/seeded-chance.ts";
import { Crowding } from "../packing/crowding.ts";
import { Hopping } from "../packing/hopping.ts";
import type { LevelSpace } from "../packing/level-space.ts";
import { type Effort, Separation } from "../packing/separation.ts";
import { insideTriangle } from "./balance.ts";
import type { Columns } from "./columns.ts";
import type { StructureLevel } from "./structure-level.ts";
import type { LoadTask } from "./task.ts";

/** More pieces than this on one shelf are not tried. */
const MOST_ON_A_LEVEL = 160;

/** The pieces standing on one level, all clear of each other, and the means to try another set. */
export class LevelLoad {
  count = 0;
  readonly kindOf: Int32Array;
  readonly places: Float64Array;
  /** The room its pieces take, seen from above. */
  filledMm2 = 0;
  /** True where a kind may stand here, as far as its height and its width alone go. */
  readonly admits: Uint8Array;
  readonly spread: number;
  separation: Separation;

  private hopping: Hopping | null = null;
  private readonly task: LoadTask;
  private readonly trialKinds: Int32Array;
  private readonly trialPlaces: Float64Array;

  private columns: Columns;
  private readonly shelfKg: number;

  constructor(task: LoadTask, level: StructureLevel, space: LevelSpace, columns: Columns, chance: Chance) {
    this.task = task;
    this.columns = columns;
    this.shelfKg = shelfMassKg(level.seat.areaMm2, level.seat.shelf.thicknessMm);
    const least = Math.min(...task.kinds.map((kind) => kind.areaMm2));
    const waiting = task.counts.reduce((sum, count) => sum + count, 0);
    const capacity = Math.max(2, Math.min(MOST_ON_A_LEVEL, waiting, Math.ceil(level.seat.areaMm2 / least) + 2));
    this.kindOf = new Int32Array(capacity);
    this.places = new Float64Array(3 * capacity);
    this.trialKinds = new Int32Array(capacity);
    this.trialPlaces = new Float64Array(3 * capacity);
    this.spread = Math.sqrt(level.seat.areaMm2 / Math.PI) * 1.05;
    this.separation = new Separation(new Crowding(space, task.kinds, capacity));
    this.admits = new Uint8Array(task.kinds.length);
    task.kinds.forEach((kind, k) => {
      this.admits[k] = kind.heightMm <= level.clearMm && this.standsAlone(k, chance) ? 1 : 0;
    });
  }

  get work(): number {
    return this.separation.crowding.work;
  }

  /** Whether one piece of a kind can stand on this level with nothing else there. */
  private standsAlone(kind: number, chance: Chance): boolean {
    this.trialKinds[0] = kind;
    for (let attempt = 0; attempt < 4; attempt++) {
      this.trialPlaces.fill(0, 0, 3);
      if (attempt > 0) this.separation.settle(this.trialKinds, 1, this.trialPlaces, 0, 30, chance, this.spread);
      const alone = { rounds: 6, patience: 6, steps: 60, hopeless: Number.POSITIVE_INFINITY };
      if (this.separation.part(this.trialKinds, 1, 0, this.trialPlaces, alone, chance, this.spread)) return true;
    }
    return false;
  }

  /**
   * Tries to stand the present pieces, less some, with others: kept where all stand clear, forgotten where not.
   *
   * @param without indexes of the pieces to take off, any order
   * @param added kinds to set down, the widest first
   * @param hops where they do not part at once, how long to hop from hollow to hollow; 0 for not at all
   * @returns true where it worked
   */
  tryChange(
    without: readonly number[],
    added: readonly number[],
    effort: Effort,
    hops: number,
    chance: Chance,
  ): boolean {
    const { trialKinds, trialPlaces } = this;
    let count = 0;
    if (this.count - without.length + added.length > this.kindOf.length) return false;
    for (let i = 0; i < this.count; i++) {
      if (without.includes(i)) continue;
      trialKinds[count] = this.kindOf[i] as number;
      for (let k = 0; k < 3; k++) trialPlaces[3 * count + k] = this.places[3 * i + k] as number;
      count++;
    }
    for (const kind of added) {
      trialKinds[count] = kind;
      this.separation.settle(trialKinds, count + 1, trialPlaces, count, 24, chance, this.spread);
      count++;
    }
    if (!this.separation.part(trialKinds, count, 0, trialPlaces, effort, chance, this.spread)) {
      if (hops === 0) return false;
      this.hopping ??= new Hopping(this.separation);
      if (!this.hopping.hop(trialKinds, count, trialPlaces, hops, this.spread, chance, () => true)) return false;
    }
    if (!this.balanced(count, this.columns)) return false;
    this.accept(count);
    return true;
  }

  /** Tries all present pieces and one more from a fresh, random start. */
  tryAfresh(added: readonly number[], effort: Effort, chance: Chance): boolean {
    const kinds = [...this.kindOf.subarray(0, this.count), ...added];
    if (kinds.length > this.kindOf.length) return false;
    kinds.sort((a, b) => this.areaOf(b) - this.areaOf(a));
    kinds.forEach((kind, i) => {
      this.trialKinds[i] = kind;
      this.separation.settle(this.trialKinds, i + 1, this.trialPlaces, i, 16, chance, this.spread);
    });
    if (!this.separation.part(this.trialKinds, kinds.length, 0, this.trialPlaces, effort, chance, this.spread))
      return false;
    if (!this.balanced(kinds.length, this.columns)) return false;
    this.accept(kinds.length);
    return true;
  }

  /** Moves to another standing room with the same pieces, where they can be parted there. */
  tryRoom(space: LevelSpace, columns: Columns, effort: Effort, chance: Chance): Separation | null {
    const separation = new Separation(new Crowding(space, this.task.kinds, this.kindOf.length));
    separation.crowding.work = this.work;
    this.trialKinds.set(this.kindOf);
    this.trialPlaces.set(this.places);
    const parted = separation.part(this.trialKinds, this.count, 0, this.trialPlaces, effort, chance, this.spread);
    this.separation.crowding.work = separation.crowding.work;
    return parted && this.balanced(this.count, columns) ? separation : null;
  }

  /** Takes the places the last trial found. */
  acceptRoom(separation: Separation, columns: Columns): void {
    this.separation = separation;
    this.hopping = null;
    this.columns = columns;
    this.accept(this.count);
  }

  /** Goes back to pieces and places remembered, in the standing room of that time. */
  restore(kindOf: Int32Array, places: Float64Array, room: Separation, columns: Columns): void {
    room.crowding.work = this.work;
    this.separation = room;
    this.hopping = null;
    this.columns = columns;
    this.trialKinds.set(kindOf);
    this.trialPlaces.set(places);
    this.accept(kindOf.length);
  }

  /** One of the few pieces nearest to a piece, other than those given; -1 where there is none. */
  nearTo(index: number, others: readonly number[], chance: Chance): number {
    let chosen = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.count; i++) {
      if (others.includes(i)) continue;
      const dx = (this.places[3 * i] as number) - (this.places[3 * index] as number);
      const dy = (this.places[3 * i + 1] as number) - (this.places[3 * index + 1] as number);
      const away = Math.hypot(dx, dy) * (0.6 + 0.8 * chance.next());
      if (away < least) {
        least = away;
        chosen = i;
      }
    }
    return chosen;
  }

  remove(index: number): void {
    const last = this.count - 1;
    this.filledMm2 -= this.areaOf(this.kindOf[index] as number);
    for (let i = index; i < last; i++) {
      this.kindOf[i] = this.kindOf[i + 1] as number;
      for (let k = 0; k < 3; k++) this.places[3 * i + k] = this.places[3 * i + 3 + k] as number;
    }
    this.count = last;
  }

  /** True where the trial's middle of mass, shelf and ware, lies inside the triangle of the posts beneath. */
  private balanced(count: number, columns: Columns): boolean {
    let mass = this.shelfKg;
    let x = 0;
    let y = 0;
    for (let i = 0; i < count; i++) {
      const each = (this.task.kinds[this.trialKinds[i] as number] as LoadTask["kinds"][number]).massKg;
      mass += each;
      x += each * (this.trialPlaces[3 * i] as number);
      y += each * (this.trialPlaces[3 * i + 1] as number);
    }
    return insideTriangle(columns, x / mass, y / mass);
  }

  private accept(count: number): void {
    this.kindOf.set(this.trialKinds.subarray(0, count));
    this.places.set(this.trialPlaces.subarray(0, 3 * count));
    this.count = count;
    this.filledMm2 = 0;
    for (let i = 0; i < count; i++) this.filledMm2 += this.areaOf(this.kindOf[i] as number);
  }

  private areaOf(kind: number): number {
    return (this.task.kinds[kind] as LoadTask["kinds"][number]).areaMm2;
  }
}
