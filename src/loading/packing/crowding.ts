import { closest, closestOnSegments } from "./closest.ts";
import type { LevelSpace } from "./level-space.ts";
import type { PieceKind } from "./piece-kind.ts";

/** Left between everything beyond the rules, so that rounding a place to a thousandth never breaks one. */
const SPARE_MM = 0.02;
/** Overlaps up to this deep are none: less than what is spared. */
export const TOUCH_MM = 0.012;
const MOST_ARMS = 2;

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

  private readonly kinds: number;
  private readonly disc: Float64Array;
  private readonly armCount: Int32Array;
  private readonly armAngle: Float64Array;
  private readonly armLength: Float64Array;
  private readonly armRadius: Float64Array;
  private readonly sides: Float64Array;
  private readonly circles: Float64Array;
  private readonly squares: Float64Array;
  private readonly lines: Float64Array;
  private readonly squareClear: Float64Array;
  private readonly lineClear: Float64Array;
  /** Each piece's arms as vectors from its axis, for the measure under way. */
  private readonly armX: Float64Array;
  private readonly armY: Float64Array;
  private gradient: Float64Array = new Float64Array(0);
  private energy = 0;
  private kindOf: Int32Array = new Int32Array(0);

  constructor(space: LevelSpace, pieceKinds: readonly PieceKind[], capacity: number) {
    this.capacity = capacity;
    const half = space.gapMm / 2;
    const count = pieceKinds.length;
    this.kinds = count;
    this.disc = new Float64Array(count);
    this.swing = new Float64Array(count);
    this.reach = new Float64Array(count);
    this.armCount = new Int32Array(count);
    this.armAngle = new Float64Array(count * MOST_ARMS);
    this.armLength = new Float64Array(count * MOST_ARMS);
    this.armRadius = new Float64Array(count * MOST_ARMS);
    pieceKinds.forEach((kind, k) => {
      this.disc[k] = kind.radius + half + SPARE_MM;
      let reach = this.disc[k] as number;
      this.armCount[k] = kind.arms.length;
      kind.arms.forEach((arm, a) => {
        this.armAngle[k * MOST_ARMS + a] = arm.angle;
        this.armLength[k * MOST_ARMS + a] = arm.length;
        this.armRadius[k * MOST_ARMS + a] = arm.radius + half + SPARE_MM;
        reach = Math.max(reach, arm.length + arm.radius + half + SPARE_MM);
      });
      this.reach[k] = reach;
      this.swing[k] = kind.swingMm;
    });
    const sides: number[] = [];
    const circles: number[] = [];
    for (const { region, marginMm } of space.bounds) {
      for (const side of region.sides) sides.push(side.nx, side.ny, side.offset - marginMm + half);
      if (region.circle) circles.push(region.circle.x, region.circle.y, region.circle.radius - marginMm + half);
    }
    this.sides = Float64Array.from(sides);
    this.circles = Float64Array.from(circles);
    const squares: number[] = [];
    const squareClear: number[] = [];
    const lines: number[] = [];
    const lineClear: number[] = [];
    for (const { obstacle, clearanceFor } of space.standoffs) {
      const clear = pieceKinds.map((kind) => clearanceFor(kind.heightMm) - half);
      if (obstacle.kind === "square") {
        const { x, y, half: side, turn } = obstacle;
        squares.push(x, y, side, Math.cos(turn), Math.sin(turn));
        squareClear.push(...clear);
      } else {
        lines.push(obstacle.x1, obstacle.y1, obstacle.x2 - obstacle.x1, obstacle.y2 - obstacle.y1);
        // A piece that passes by in height needs no distance at all: a reach below zero never overlaps.
        lineClear.push(...clear.map((each) => (each <= -half ? -1e9 : each)));
      }
    }
    this.squares = Float64Array.from(squares);
    this.squareClear = Float64Array.from(squareClear);
    this.lines = Float64Array.from(lines);
    this.lineClear = Float64Array.from(lineClear);
    this.pairWeight = new Float64Array(capacity * capacity).fill(1);
    this.edgeWeight = new Float64Array(capacity).fill(1);
    this.pain = new Float64Array(capacity);
    this.armX = new Float64Array(capacity * MOST_ARMS);
    this.armY = new Float64Array(capacity * MOST_ARMS);
  }

  /** Sets every weight back to one, for `count` pieces. */
  forgiveAll(count: number): void {
    for (let i = 0; i < count; i++) this.pairWeight.fill(1, i * this.capacity, i * this.capacity + count);
    this.edgeWeight.fill(1, 0, count);
  }

  /** Shrinks or grows the first bounding circle: the record benchmarks look for the smallest container. */
  setRadius(radius: number): void {
    this.circles[2] = radius;
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
    this.start(kindOf, count, places, gradient);
    for (let i = 0; i < count; i++) {
      this.againstSurroundings(i, places);
      for (let j = i + 1; j < count; j++) this.againstPiece(i, j, places);
    }
    return this.energy;
  }

  /** The crowding of one piece alone against `others` standing pieces and the surroundings; nothing else is measured. */
  measureOne(kindOf: Int32Array, count: number, places: Float64Array, gradient: Float64Array, piece: number): number {
    this.start(kindOf, count, places, gradient);
    this.againstSurroundings(piece, places);
    for (let j = 0; j < count; j++) if (j !== piece) this.againstPiece(piece, j, places);
    return this.energy;
  }

  private start(kindOf: Int32Array, count: number, places: Float64Array, gradient: Float64Array): void {
    this.work += count;
    this.kindOf = kindOf;
    this.gradient = gradient;
    this.energy = 0;
    this.deepest = 0;
    gradient.fill(0, 0, 3 * count);
    this.pain.fill(0, 0, count);
    for (let i = 0; i < count; i++) {
      const kind = kindOf[i] as number;
      const arms = this.armCount[kind] as number;
      if (arms === 0) continue;
      const turn = (places[3 * i + 2] as number) / (this.swing[kind] as number);
      for (let a = 0; a < arms; a++) {
        const at = kind * MOST_ARMS + a;
        const angle = (this.armAngle[at] as number) + turn;
        const length = this.armLength[at] as number;
        this.armX[i * MOST_ARMS + a] = length * Math.cos(angle);
        this.armY[i * MOST_ARMS + a] = length * Math.sin(angle);
      }
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
    const x = s * (this.armX[i * MOST_ARMS + arm] as number);
    const y = s * (this.armY[i * MOST_ARMS + arm] as number);
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
    const ax = places[3 * i] as number;
    const ay = places[3 * i + 1] as number;
    const bx = places[3 * j] as number;
    const by = places[3 * j + 1] as number;
    const dx = ax - bx;
    const dy = ay - by;
    const apart2 = dx * dx + dy * dy;
    const far = (this.reach[ki] as number) + (this.reach[kj] as number);
    if (apart2 >= far * far) return;
    const weight = this.pairWeight[i * this.capacity + j] as number;
    const discs = (this.disc[ki] as number) + (this.disc[kj] as number);
    if (apart2 < discs * discs) {
      const apart = Math.sqrt(apart2);
      const nx = apart > 1e-9 ? dx / apart : 1;
      const ny = apart > 1e-9 ? dy / apart : 0;
      this.note(weight, discs - apart);
      this.push(i, -1, 0, nx, ny, weight, discs - apart);
      this.push(j, -1, 0, -nx, -ny, weight, discs - apart);
    }
    const armsI = this.armCount[ki] as number;
    const armsJ = this.armCount[kj] as number;
    if (armsI === 0 && armsJ === 0) return;
    for (let a = -1; a < armsI; a++) {
      const ux = a < 0 ? 0 : (this.armX[i * MOST_ARMS + a] as number);
      const uy = a < 0 ? 0 : (this.armY[i * MOST_ARMS + a] as number);
      const radiusA = a < 0 ? (this.disc[ki] as number) : (this.armRadius[ki * MOST_ARMS + a] as number);
      for (let b = a < 0 ? 0 : -1; b < armsJ; b++) {
        const vx = b < 0 ? 0 : (this.armX[j * MOST_ARMS + b] as number);
        const vy = b < 0 ? 0 : (this.armY[j * MOST_ARMS + b] as number);
        const radii = radiusA + (b < 0 ? (this.disc[kj] as number) : (this.armRadius[kj * MOST_ARMS + b] as number));
        const d2 = closestOnSegments(ax, ay, ux, uy, bx, by, vx, vy);
        if (d2 >= radii * radii) continue;
        const d = Math.sqrt(d2);
        let nx = closest.dx;
        let ny = closest.dy;
        let scale = d;
        if (d < 1e-6) {
          // Arms that cross: push the axes apart.
          nx = apart2 > 1e-12 ? dx : 1;
          ny = apart2 > 1e-12 ? dy : 0;
          scale = Math.hypot(nx, ny);
        }
        nx /= scale;
        ny /= scale;
        const s = closest.s;
        const t = closest.t;
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
    const weight = this.edgeWeight[i] as number;
    const arms = this.armCount[kind] as number;
    for (let a = -1; a < arms; a++) {
      const ux = a < 0 ? 0 : (this.armX[i * MOST_ARMS + a] as number);
      const uy = a < 0 ? 0 : (this.armY[i * MOST_ARMS + a] as number);
      const radius = a < 0 ? (this.disc[kind] as number) : (this.armRadius[kind * MOST_ARMS + a] as number);
      this.withinBounds(i, a, x + ux, y + uy, radius, weight);
      for (let o = 0; o < this.squares.length / 5; o++) {
        this.clearOfSquare(i, a, o, x, y, ux, uy, radius + (this.squareClear[o * this.kinds + kind] as number), weight);
      }
      for (let o = 0; o < this.lines.length / 4; o++) {
        this.clearOfLine(i, a, o, x, y, ux, uy, radius + (this.lineClear[o * this.kinds + kind] as number), weight);
      }
    }
  }

  /** A convex region holds a stadium where it holds both its ends; the near end is the disc's own middle. */
  private withinBounds(i: number, arm: number, x: number, y: number, radius: number, weight: number): void {
    const sides = this.sides;
    for (let o = 0; o < sides.length; o += 3) {
      const nx = sides[o] as number;
      const ny = sides[o + 1] as number;
      const depth = nx * x + ny * y + radius - (sides[o + 2] as number);
      if (depth <= 0) continue;
      this.note(weight, depth);
      this.push(i, arm, 1, -nx, -ny, weight, depth);
    }
    const circles = this.circles;
    for (let o = 0; o < circles.length; o += 3) {
      const dx = x - (circles[o] as number);
      const dy = y - (circles[o + 1] as number);
      const room = (circles[o + 2] as number) - radius;
      if (room >= 0 && dx * dx + dy * dy <= room * room) continue;
      const d = Math.sqrt(dx * dx + dy * dy);
      const depth = d - room;
      if (depth <= 0) continue;
      this.note(weight, depth);
      this.push(i, arm, 1, d > 1e-9 ? -dx / d : 1, d > 1e-9 ? -dy / d : 0, weight, depth);
    }
  }

  private clearOfLine(
    i: number,
    arm: number,
    o: number,
    x: number,
    y: number,
    ux: number,
    uy: number,
    reach: number,
    weight: number,
  ): void {
    if (reach <= 0) return;
    const lines = this.lines;
    const lx = lines[4 * o] as number;
    const ly = lines[4 * o + 1] as number;
    const d2 = closestOnSegments(x, y, ux, uy, lx, ly, lines[4 * o + 2] as number, lines[4 * o + 3] as number);
    if (d2 >= reach * reach) return;
    const d = Math.sqrt(d2);
    // A piece right on the line is pushed toward the axis, where there is room.
    const away = Math.hypot(x, y);
    const nx = d > 1e-6 ? closest.dx / d : away > 1e-9 ? -x / away : 1;
    const ny = d > 1e-6 ? closest.dy / d : away > 1e-9 ? -y / away : 0;
    this.note(weight, reach - d);
    this.push(i, arm, closest.s, nx, ny, weight, reach - d);
  }

  private clearOfSquare(
    i: number,
    arm: number,
    o: number,
    x: number,
    y: number,
    ux: number,
    uy: number,
    reach: number,
    weight: number,
  ): void {
    const squares = this.squares;
    const half = squares[5 * o + 2] as number;
    const rx = x - (squares[5 * o] as number);
    const ry = y - (squares[5 * o + 1] as number);
    const near = reach + half * Math.SQRT2 + Math.abs(ux) + Math.abs(uy);
    if (rx * rx + ry * ry >= near * near) return;
    const cos = squares[5 * o + 3] as number;
    const sin = squares[5 * o + 4] as number;
    // In the square's own frame.
    const px = rx * cos + ry * sin;
    const py = ry * cos - rx * sin;
    const qx = ux * cos + uy * sin;
    const qy = uy * cos - ux * sin;
    let least = Number.POSITIVE_INFINITY;
    let share = 0;
    let nx = 1;
    let ny = 0;
    const length2 = qx * qx + qy * qy;
    const ends = length2 > 0 ? 3 : 1;
    for (let e = 0; e < ends; e++) {
      // Both ends, and the point nearest the square's middle for an arm that runs across it.
      const s = e === 0 ? 0 : e === 1 ? 1 : Math.min(1, Math.max(0, -(px * qx + py * qy) / length2));
      const ex = px + s * qx;
      const ey = py + s * qy;
      const ox = Math.abs(ex) - half;
      const oy = Math.abs(ey) - half;
      let distance: number;
      let mx: number;
      let my: number;
      if (ox > 0 && oy > 0) {
        distance = Math.sqrt(ox * ox + oy * oy);
        mx = (Math.sign(ex) * ox) / distance;
        my = (Math.sign(ey) * oy) / distance;
      } else if (ox > oy) {
        distance = ox;
        mx = ex < 0 ? -1 : 1;
        my = 0;
      } else {
        distance = oy;
        mx = 0;
        my = ey < 0 ? -1 : 1;
      }
      if (distance < least) {
        least = distance;
        share = s;
        nx = mx;
        ny = my;
      }
    }
    if (length2 > 0 && least > 0) {
      for (let c = 0; c < 4; c++) {
        const cx = c & 1 ? half : -half;
        const cy = c & 2 ? half : -half;
        const s = Math.min(1, Math.max(0, ((cx - px) * qx + (cy - py) * qy) / length2));
        const mx = px + s * qx - cx;
        const my = py + s * qy - cy;
        const distance = Math.sqrt(mx * mx + my * my);
        if (distance < least && distance > 1e-9) {
          least = distance;
          share = s;
          nx = mx / distance;
          ny = my / distance;
        }
      }
    }
    const depth = reach - least;
    if (depth <= 0) return;
    this.note(weight, depth);
    this.push(i, arm, share, nx * cos - ny * sin, nx * sin + ny * cos, weight, depth);
  }
}
