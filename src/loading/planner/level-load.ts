import type { Chance } from "../../measures/seeded-chance.ts";
import { Crowding } from "../packing/crowding.ts";
import { Hopping } from "../packing/hopping.ts";
import { type Effort, Separation } from "../packing/separation.ts";
import { insideByMm, MARGIN_MM } from "./balance.ts";
import type { Stand } from "./stand.ts";
import type { LoadTask } from "./task.ts";

/** More pieces than this on one shelf are not tried. */
const MOST_ON_A_LEVEL = 160;
const LOOKS = 24;
// Whether a kind may stand on a level is asked once: held pieces may leave it a narrow hole or two.
const LOOKS_FOR_A_KIND = 30;
const LOOKS_FOR_EACH_HELD = 8;

interface Remembered {
  readonly kindOf: Int32Array;
  readonly places: Float64Array;
  readonly insideMm: number;
}

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

  private stand: Stand;
  /** How far inside the triangle of its posts the present middle of mass lies. */
  private insideMm: number;

  constructor(task: LoadTask, stand: Stand, chance: Chance) {
    this.task = task;
    this.stand = stand;
    const { held } = stand;
    const least = Math.min(...task.kinds.map((kind) => kind.areaMm2));
    const waiting = task.counts.reduce((sum, count) => sum + count, 0);
    const most = Math.min(MOST_ON_A_LEVEL, waiting, Math.ceil(stand.areaMm2 / least) + 2);
    const capacity = Math.max(2, most, held.kindOf.length + 1);
    this.kindOf = new Int32Array(capacity);
    this.places = new Float64Array(3 * capacity);
    this.trialKinds = new Int32Array(capacity);
    this.trialPlaces = new Float64Array(3 * capacity);
    this.spread = stand.spreadMm;
    this.separation = this.separationOn(stand);
    this.trialKinds.set(held.kindOf);
    this.trialPlaces.set(held.places);
    this.insideMm = this.trialInside(held.kindOf.length, stand);
    this.accept(held.kindOf.length);
    this.admits = new Uint8Array(task.kinds.length);
    task.kinds.forEach((kind, k) => {
      this.admits[k] = kind.heightMm <= stand.clearMm && this.standsAlone(k, chance) ? 1 : 0;
    });
  }

  /** How many of its first pieces stay where they stand. */
  get held(): number {
    return this.separation.crowding.held;
  }

  private separationOn(stand: Stand): Separation {
    return new Separation(new Crowding(stand.space, this.task.kinds, this.kindOf.length, stand.held.kindOf.length));
  }

  get work(): number {
    return this.separation.crowding.work;
  }

  /** Whether one piece of a kind can stand on this level with nothing there but what is held. */
  private standsAlone(kind: number, chance: Chance): boolean {
    const { held, trialKinds, trialPlaces, spread } = this;
    trialKinds[held] = kind;
    for (let attempt = 0; attempt < 4; attempt++) {
      trialPlaces.fill(0, 3 * held, 3 * held + 3);
      const looks = LOOKS_FOR_A_KIND + LOOKS_FOR_EACH_HELD * held;
      if (attempt > 0) this.separation.settle(trialKinds, held + 1, trialPlaces, held, looks, chance, spread);
      const alone = { rounds: 6, patience: 6, steps: 60, hopeless: Number.POSITIVE_INFINITY };
      if (this.separation.part(trialKinds, held + 1, trialPlaces, alone, chance, spread)) return true;
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
      this.separation.settle(trialKinds, count + 1, trialPlaces, count, LOOKS, chance, this.spread);
      count++;
    }
    if (!this.separation.part(trialKinds, count, trialPlaces, effort, chance, this.spread)) {
      if (hops === 0) return false;
      this.hopping ??= new Hopping(this.separation);
      if (!this.hopping.hop(trialKinds, count, trialPlaces, hops, this.spread, chance, () => true)) return false;
    }
    return this.acceptBalanced(count);
  }

  /** Tries all present pieces and others set down just so, nudged where they must be. Places as in `places`. */
  trySetDown(
    kinds: readonly number[],
    places: readonly (readonly number[])[],
    effort: Effort,
    chance: Chance,
  ): boolean {
    const count = this.count + kinds.length;
    if (count > this.kindOf.length) return false;
    this.trialKinds.set(this.kindOf.subarray(0, this.count));
    this.trialPlaces.set(this.places.subarray(0, 3 * this.count));
    kinds.forEach((kind, i) => {
      this.trialKinds[this.count + i] = kind;
      this.trialPlaces.set(places[i] as readonly number[], 3 * (this.count + i));
    });
    if (!this.separation.part(this.trialKinds, count, this.trialPlaces, effort, chance, this.spread)) return false;
    return this.acceptBalanced(count);
  }

  /** Tries all present pieces and one more from a fresh, random start. */
  tryAfresh(added: readonly number[], effort: Effort, chance: Chance): boolean {
    const { held, trialKinds, trialPlaces } = this;
    const kinds = [...this.kindOf.subarray(held, this.count), ...added];
    const count = held + kinds.length;
    if (count > this.kindOf.length) return false;
    kinds.sort((a, b) => this.areaOf(b) - this.areaOf(a));
    trialKinds.set(this.kindOf.subarray(0, held));
    trialPlaces.set(this.places.subarray(0, 3 * held));
    for (let i = held; i < count; i++) {
      trialKinds[i] = kinds[i - held] as number;
      this.separation.settle(trialKinds, i + 1, trialPlaces, i, 16, chance, this.spread);
    }
    if (!this.separation.part(trialKinds, count, trialPlaces, effort, chance, this.spread)) return false;
    return this.acceptBalanced(count);
  }

  /** Moves to the same level on other posts with the same pieces, where they can be parted there. */
  tryStand(stand: Stand, effort: Effort, chance: Chance): Separation | null {
    const separation = this.separationOn(stand);
    separation.crowding.work = this.work;
    this.trialKinds.set(this.kindOf);
    this.trialPlaces.set(this.places);
    const parted = separation.part(this.trialKinds, this.count, this.trialPlaces, effort, chance, this.spread);
    this.separation.crowding.work = separation.crowding.work;
    return parted && this.balanced(this.trialInside(this.count, stand)) ? separation : null;
  }

  /** Takes the places the last trial found. */
  acceptStand(stand: Stand, separation: Separation): void {
    this.separation = separation;
    this.hopping = null;
    this.stand = stand;
    this.insideMm = this.trialInside(this.count, stand);
    this.accept(this.count);
  }

  /** Goes back to pieces and places remembered, on the posts of that time. */
  restore(kindOf: Int32Array, places: Float64Array, room: Separation, stand: Stand): void {
    room.crowding.work = this.work;
    this.separation = room;
    this.hopping = null;
    this.stand = stand;
    this.trialKinds.set(kindOf);
    this.trialPlaces.set(places);
    this.insideMm = this.trialInside(kindOf.length, stand);
    this.accept(kindOf.length);
  }

  /** One of the few pieces nearest to a piece, other than those given; -1 where there is none. */
  nearTo(index: number, others: readonly number[], chance: Chance): number {
    let chosen = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = this.held; i < this.count; i++) {
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

  /** Whether the level keeps its balance without a piece. */
  canSpare(index: number): boolean {
    return this.balanced(this.trialInside(this.tryWithout(index), this.stand));
  }

  /** Takes a piece off. */
  remove(index: number): void {
    const count = this.tryWithout(index);
    this.insideMm = this.trialInside(count, this.stand);
    this.accept(count);
  }

  /** What stands here now, to come back to. */
  remember(): Remembered {
    const { count, insideMm } = this;
    return { kindOf: this.kindOf.slice(0, count), places: this.places.slice(0, 3 * count), insideMm };
  }

  recall({ kindOf, places, insideMm }: Remembered): void {
    this.trialKinds.set(kindOf);
    this.trialPlaces.set(places);
    this.insideMm = insideMm;
    this.accept(kindOf.length);
  }

  private tryWithout(index: number): number {
    let count = 0;
    for (let i = 0; i < this.count; i++) {
      if (i === index) continue;
      this.trialKinds[count] = this.kindOf[i] as number;
      for (let k = 0; k < 3; k++) this.trialPlaces[3 * count + k] = this.places[3 * i + k] as number;
      count++;
    }
    return count;
  }

  private trialInside(count: number, stand: Stand): number {
    return insideByMm(this.task, stand.footing, this.trialKinds, count, this.trialPlaces);
  }

  /** What is held may be out of balance to begin with: then no change may make it worse. */
  private balanced(insideMm: number): boolean {
    return insideMm >= Math.min(MARGIN_MM, this.insideMm);
  }

  private acceptBalanced(count: number): boolean {
    const insideMm = this.trialInside(count, this.stand);
    if (!this.balanced(insideMm)) return false;
    this.insideMm = insideMm;
    this.accept(count);
    return true;
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
