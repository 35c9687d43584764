import { closest, closestOnSegments } from "./closest.ts";
import { closestToSquare } from "./closest-to-square.ts";
import type { LevelSpace } from "./level-space.ts";
import { Neighbours } from "./neighbours.ts";
import type { PieceKind } from "./piece-kind.ts";
import { MOST_ARMS, pieceTable } from "./piece-table.ts";
import { Surroundings } from "./surroundings.ts";

/** Overlaps up to this deep are none: less than what is spared. */
export const TOUCH_MM = 0.012;
/** From this many pieces on, pairs far apart are not looked at each time. */
const MANY = 26;

/**
 * How crowded a level is: the sum over everything that overlaps of weight × depth², with its gradient. Zero means that
 * every piece stands clear. Places are `[x, y, turn]` for each piece in one array; a turn is in millimetres of swing
 * (radians × `swing` of its kind) so that all three are alike to the descent. Nothing is allocated while it runs.
 */
export class Crowding {
  /** Millimetres of swing for a radian of turn, by kind; zero for a piece that looks the same however turned. */
  readonly swing: Float64Array;
  /** How far a kind reaches from its axis, half the gap included. */
  readonly reach: Float64Array;
  /** The deepest overlap of the last measure. */
  deepest = 0;
  /** What each piece suffered in the last measure: its share of weight × depth². */
  readonly pain: Float64Array;
  /** Work done so far: pieces looked at. */
  work = 0;
  /** By piece pair, then by piece and surroundings: what an overlap there weighs. */
  readonly pairWeight: Float64Array;
  readonly edgeWeight: Float64Array;
  /** The most pieces it can measure. */
  readonly capacity: number;
  /** The first so many pieces stand for good: nobody asks whether they are in each other's way, only who is in theirs. */
  readonly held: number;

  private readonly surroundings: Surroundings;
  private readonly neighbours: Neighbours;
  private readonly disc: Float64Array;
  private readonly armCount: Int32Array;
  private readonly armX: Float64Array;
  private readonly armY: Float64Array;
  private readonly armRadius: Float64Array;
  /** Each piece's arms as vectors from its axis, as turned in the measure under way. */
  private readonly turnedX: Float64Array;
  private readonly turnedY: Float64Array;
  private gradient: Float64Array = new Float64Array(0);
  private energy = 0;
  private scale = 1;
  private kindOf: Int32Array = new Int32Array(0);

  constructor(space: LevelSpace, pieceKinds: readonly PieceKind[], capacity: number, held = 0) {
    this.capacity = capacity;
    this.held = held;
    const table = pieceTable(pieceKinds, space.gapMm / 2);
    this.disc = table.disc;
    this.swing = table.swing;
    this.reach = table.reach;
    this.armCount = table.armCount;
    this.armX = table.armX;
    this.armY = table.armY;
    this.armRadius = table.armRadius;
    this.surroundings = new Surroundings(space, pieceKinds);
    this.neighbours = new Neighbours(capacity, this.reach);
    this.pairWeight = new Float64Array(capacity * capacity).fill(1);
    this.edgeWeight = new Float64Array(capacity).fill(1);
    this.pain = new Float64Array(capacity);
    this.turnedX = new Float64Array(capacity * MOST_ARMS);
    this.turnedY = new Float64Array(capacity * MOST_ARMS);
  }

  /** Sets every weight back to one, for `count` pieces. */
  forgiveAll(count: number): void {
    for (let i = 0; i < count; i++) this.pairWeight.fill(1, i * this.capacity, i * this.capacity + count);
    this.edgeWeight.fill(1, 0, count);
  }

  /** Grows or shrinks every piece alike, arms and gaps too: the record benchmarks look for the widest that still fit. */
  scalePieces(factor: number): void {
    const by = factor / this.scale;
    this.scale = factor;
    for (const table of [this.disc, this.reach, this.armX, this.armY, this.armRadius]) {
      for (let k = 0; k < table.length; k++) table[k] = (table[k] as number) * by;
    }
    this.neighbours.forget();
  }

  /**
   * Measures the crowding of `count` pieces and its gradient.
   *
   * @param kindOf each piece's kind
   * @param places x, y and turn of each piece
   * @param gradient filled with the gradient
   * @returns the sum of weight × depth²
   */
  measure(kindOf: Int32Array, count: number, places: Float64Array, gradient: Float64Array): number {
    const { held } = this;
    this.work += count;
    this.kindOf = kindOf;
    this.gradient = gradient;
    this.energy = 0;
    this.deepest = 0;
    gradient.fill(0, 0, 3 * count);
    this.pain.fill(0, 0, count);
    for (let i = 0; i < count; i++) this.turnArms(i, places);
    for (let i = held; i < count; i++) this.againstSurroundings(i, places);
    if (count < MANY) {
      for (let i = 0; i < count; i++) {
        for (let j = i < held ? held : i + 1; j < count; j++) this.againstPiece(i, j, places);
      }
    } else {
      const { neighbours } = this;
      neighbours.refresh(kindOf, count, places);
      for (let i = 0; i < count; i++) {
        const end = neighbours.start[i + 1] as number;
        for (let n = neighbours.start[i] as number; n < end; n++) {
          const j = neighbours.list[n] as number;
          if (j >= held) this.againstPiece(i, j, places);
        }
      }
    }
    return this.energy;
  }

  /** Readies `measureOne`: every piece's arms as they are turned now. */
  prepare(kindOf: Int32Array, count: number, places: Float64Array): void {
    this.work += count >> 2;
    this.kindOf = kindOf;
    for (let i = 0; i < count; i++) this.turnArms(i, places);
  }

  /**
   * The crowding of one piece alone against the others and the surroundings, after `prepare`; the others stand as they did
   * then. Pains and gradient are left without meaning.
   *
   * @param most stop once the crowding is more than this
   */
  measureOne(count: number, places: Float64Array, scratch: Float64Array, piece: number, most: number): number {
    this.work += count >> 2;
    this.gradient = scratch;
    this.energy = 0;
    this.turnArms(piece, places);
    this.againstSurroundings(piece, places);
    for (let j = 0; j < count && this.energy <= most; j++) if (j !== piece) this.againstPiece(piece, j, places);
    return this.energy;
  }

  private turnArms(i: number, places: Float64Array): void {
    const kind = this.kindOf[i] as number;
    const arms = this.armCount[kind] as number;
    if (arms === 0) return;
    const turn = (places[3 * i + 2] as number) / (this.swing[kind] as number);
    const cos = Math.cos(turn);
    const sin = Math.sin(turn);
    for (let a = 0; a < arms; a++) {
      const x = this.armX[kind * MOST_ARMS + a] as number;
      const y = this.armY[kind * MOST_ARMS + a] as number;
      this.turnedX[i * MOST_ARMS + a] = x * cos - y * sin;
      this.turnedY[i * MOST_ARMS + a] = x * sin + y * cos;
    }
  }

  /** Adds an overlap of piece i at the share s of its arm (-1: its disc), pushed along (nx, ny). */
  private push(i: number, arm: number, s: number, nx: number, ny: number, weight: number, depth: number): void {
    const force = -2 * weight * depth;
    const gradient = this.gradient;
    gradient[3 * i] = (gradient[3 * i] as number) + force * nx;
    gradient[3 * i + 1] = (gradient[3 * i + 1] as number) + force * ny;
    this.pain[i] = (this.pain[i] as number) + weight * depth * depth;
    if (arm < 0) return;
    const x = s * (this.turnedX[i * MOST_ARMS + arm] as number);
    const y = s * (this.turnedY[i * MOST_ARMS + arm] as number);
    const lever = (x * ny - y * nx) / (this.swing[this.kindOf[i] as number] as number);
    gradient[3 * i + 2] = (gradient[3 * i + 2] as number) + force * lever;
  }

  private note(weight: number, depth: number): void {
    this.energy += weight * depth * depth;
    if (depth > this.deepest) this.deepest = depth;
  }

  private againstPiece(i: number, j: number, places: Float64Array): void {
    const ki = this.kindOf[i] as number;
    const kj = this.kindOf[j] as number;
    const dx = (places[3 * i] as number) - (places[3 * j] as number);
    const dy = (places[3 * i + 1] as number) - (places[3 * j + 1] as number);
    const apart2 = dx * dx + dy * dy;
    const far = (this.reach[ki] as number) + (this.reach[kj] as number);
    if (apart2 >= far * far) return;
    const discs = (this.disc[ki] as number) + (this.disc[kj] as number);
    if (apart2 < discs * discs) {
      const weight = this.pairWeight[i * this.capacity + j] as number;
      const apart = Math.sqrt(apart2);
      const nx = apart > 1e-9 ? dx / apart : 1;
      const ny = apart > 1e-9 ? dy / apart : 0;
      this.note(weight, discs - apart);
      this.push(i, -1, 0, nx, ny, weight, discs - apart);
      this.push(j, -1, 0, -nx, -ny, weight, discs - apart);
    }
    const armsI = this.armCount[ki] as number;
    const armsJ = this.armCount[kj] as number;
    if (armsI > 0 || armsJ > 0) this.armsAgainst(i, j, ki, kj, armsI, armsJ, dx, dy);
  }

  /** Arms against discs and arms, in a frame about piece j's axis. */
  private armsAgainst(
    i: number,
    j: number,
    ki: number,
    kj: number,
    armsI: number,
    armsJ: number,
    dx: number,
    dy: number,
  ): void {
    for (let a = -1; a < armsI; a++) {
      const ux = a < 0 ? 0 : (this.turnedX[i * MOST_ARMS + a] as number);
      const uy = a < 0 ? 0 : (this.turnedY[i * MOST_ARMS + a] as number);
      const radiusA = a < 0 ? (this.disc[ki] as number) : (this.armRadius[ki * MOST_ARMS + a] as number);
      for (let b = a < 0 ? 0 : -1; b < armsJ; b++) {
        const vx = b < 0 ? 0 : (this.turnedX[j * MOST_ARMS + b] as number);
        const vy = b < 0 ? 0 : (this.turnedY[j * MOST_ARMS + b] as number);
        const radii = radiusA + (b < 0 ? (this.disc[kj] as number) : (this.armRadius[kj * MOST_ARMS + b] as number));
        const d2 = closestOnSegments(dx, dy, ux, uy, 0, 0, vx, vy);
        if (d2 >= radii * radii) continue;
        const weight = this.pairWeight[i * this.capacity + j] as number;
        const d = Math.sqrt(d2);
        let nx = closest.dx;
        let ny = closest.dy;
        let scale = d;
        if (d < 1e-6) {
          // Arms that cross: push the axes apart.
          scale = Math.sqrt(dx * dx + dy * dy);
          nx = scale > 1e-6 ? dx : 1;
          ny = scale > 1e-6 ? dy : 0;
          if (scale <= 1e-6) scale = 1;
        }
        nx /= scale;
        ny /= scale;
        const { s, t } = closest;
        this.note(weight, radii - d);
        this.push(i, a, s, nx, ny, weight, radii - d);
        this.push(j, b, t, -nx, -ny, weight, radii - d);
      }
    }
  }

  private againstSurroundings(i: number, places: Float64Array): void {
    const kind = this.kindOf[i] as number;
    const x = places[3 * i] as number;
    const y = places[3 * i + 1] as number;
    const reach = this.reach[kind] as number;
    const around = this.surroundings;
    const arms = this.armCount[kind] as number;
    if (!around.wellWithin(x, y, reach)) {
      for (let a = -1; a < arms; a++) this.withinBounds(i, a, x, y, kind);
    }
    for (let o = 0; o < around.squareCount; o++) {
      if (around.farFromSquare(o, kind, x, y, reach)) continue;
      for (let a = -1; a < arms; a++) this.clearOfSquare(i, a, o, x, y, kind);
    }
    for (let o = 0; o < around.lineCount; o++) {
      if (around.farFromLine(o, kind, x, y, reach)) continue;
      for (let a = -1; a < arms; a++) this.clearOfLine(i, a, o, x, y, kind);
    }
    for (let o = 0; o < around.fenceCount; o++) {
      for (let a = -1; a < arms; a++) this.behindFence(i, a, o, x, y, kind);
    }
  }

  private radiusOf(kind: number, arm: number): number {
    return arm < 0 ? (this.disc[kind] as number) : (this.armRadius[kind * MOST_ARMS + arm] as number);
  }

  /** A convex region holds a stadium where it holds both its ends; the near end is the disc's own middle. */
  private withinBounds(i: number, arm: number, axisX: number, axisY: number, kind: number): void {
    const { sides, circles } = this.surroundings;
    const weight = this.edgeWeight[i] as number;
    const radius = this.radiusOf(kind, arm);
    const x = arm < 0 ? axisX : axisX + (this.turnedX[i * MOST_ARMS + arm] as number);
    const y = arm < 0 ? axisY : axisY + (this.turnedY[i * MOST_ARMS + arm] as number);
    for (let o = 0; o < sides.length; o += 3) {
      const nx = sides[o] as number;
      const ny = sides[o + 1] as number;
      const depth = nx * x + ny * y + radius - (sides[o + 2] as number);
      if (depth <= 0) continue;
      this.note(weight, depth);
      this.push(i, arm, 1, -nx, -ny, weight, depth);
    }
    for (let o = 0; o < circles.length; o += 3) {
      const dx = x - (circles[o] as number);
      const dy = y - (circles[o + 1] as number);
      const room = (circles[o + 2] as number) - radius;
      if (room >= 0 && dx * dx + dy * dy <= room * room) continue;
      const d = Math.sqrt(dx * dx + dy * dy);
      this.note(weight, d - room);
      this.push(i, arm, 1, d > 1e-9 ? -dx / d : 1, d > 1e-9 ? -dy / d : 0, weight, d - room);
    }
  }

  private behindFence(i: number, arm: number, o: number, axisX: number, axisY: number, kind: number): void {
    const { fences } = this.surroundings;
    const nx = fences[3 * o] as number;
    const ny = fences[3 * o + 1] as number;
    const x = arm < 0 ? axisX : axisX + (this.turnedX[i * MOST_ARMS + arm] as number);
    const y = arm < 0 ? axisY : axisY + (this.turnedY[i * MOST_ARMS + arm] as number);
    const clear = this.radiusOf(kind, arm) + this.surroundings.fenceClear(o, kind);
    const depth = nx * x + ny * y + clear - (fences[3 * o + 2] as number);
    if (depth <= 0) return;
    const weight = this.edgeWeight[i] as number;
    this.note(weight, depth);
    this.push(i, arm, 1, -nx, -ny, weight, depth);
  }

  private clearOfLine(i: number, arm: number, o: number, x: number, y: number, kind: number): void {
    const around = this.surroundings;
    const reach = this.radiusOf(kind, arm) + around.lineClear(o, kind);
    if (reach <= 0) return;
    const ux = arm < 0 ? 0 : (this.turnedX[i * MOST_ARMS + arm] as number);
    const uy = arm < 0 ? 0 : (this.turnedY[i * MOST_ARMS + arm] as number);
    const { lines } = around;
    const d2 = closestOnSegments(
      x,
      y,
      ux,
      uy,
      lines[4 * o] as number,
      lines[4 * o + 1] as number,
      lines[4 * o + 2] as number,
      lines[4 * o + 3] as number,
    );
    if (d2 >= reach * reach) return;
    const d = Math.sqrt(d2);
    // A piece right on the line is pushed toward the axis, where there is room.
    const away = Math.sqrt(x * x + y * y);
    const nx = d > 1e-6 ? closest.dx / d : away > 1e-9 ? -x / away : 1;
    const ny = d > 1e-6 ? closest.dy / d : away > 1e-9 ? -y / away : 0;
    const weight = this.edgeWeight[i] as number;
    this.note(weight, reach - d);
    this.push(i, arm, closest.s, nx, ny, weight, reach - d);
  }

  private clearOfSquare(i: number, arm: number, o: number, x: number, y: number, kind: number): void {
    const around = this.surroundings;
    const { squares } = around;
    const reach = this.radiusOf(kind, arm) + around.squareClear(o, kind);
    const ux = arm < 0 ? 0 : (this.turnedX[i * MOST_ARMS + arm] as number);
    const uy = arm < 0 ? 0 : (this.turnedY[i * MOST_ARMS + arm] as number);
    const rx = x - (squares[5 * o] as number);
    const ry = y - (squares[5 * o + 1] as number);
    const half = squares[5 * o + 2] as number;
    const cos = squares[5 * o + 3] as number;
    const sin = squares[5 * o + 4] as number;
    // In the square's own frame.
    const distance = closestToSquare(
      rx * cos + ry * sin,
      ry * cos - rx * sin,
      ux * cos + uy * sin,
      uy * cos - ux * sin,
      half,
    );
    const depth = reach - distance;
    if (depth <= 0) return;
    const { s, dx, dy } = closest;
    const weight = this.edgeWeight[i] as number;
    this.note(weight, depth);
    this.push(i, arm, s, dx * cos - dy * sin, dx * sin + dy * cos, weight, depth);
  }
}
