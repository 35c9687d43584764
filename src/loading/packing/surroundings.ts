import type { LevelSpace } from "./level-space.ts";
import type { PieceKind } from "./piece-kind.ts";

/**
 * Of what every piece is spared all round, this much is given back at an edge: so that a piece exactly as wide as its
 * shelf still stands on it, while an overlap too small to see (TOUCH_MM) and rounding to a thousandth stay within the edge.
 */
const EDGE_MM = 0.0081;

/**
 * What bounds and stands on a level, as flat arrays: the shelf's and the chamber's edges, posts, probes, spyholes. Edges
 * that another edge makes needless are left out.
 */
export class Surroundings {
  /** nx, ny, offset of each straight side. */
  readonly sides: Float64Array;
  /** x, y, radius of each circle. */
  readonly circles: Float64Array;
  /** x, y, half the side, cosine and sine of its turn, of each square. */
  readonly squares: Float64Array;
  /** From x, y along dx, dy, of each line. */
  readonly lines: Float64Array;
  /** nx, ny, offset of each line that some kinds may not pass. */
  readonly fences: Float64Array;
  readonly squareCount: number;
  readonly lineCount: number;
  readonly fenceCount: number;
  private readonly kinds: number;
  private readonly squareClears: Float64Array;
  private readonly lineClears: Float64Array;
  private readonly fenceClears: Float64Array;
  /** The widest circle about the axis that every bound holds. */
  private readonly within: number;

  constructor(space: LevelSpace, pieceKinds: readonly PieceKind[]) {
    const half = space.gapMm / 2;
    this.kinds = pieceKinds.length;
    const circles: number[] = [];
    for (const { region, marginMm } of space.bounds) {
      if (region.circle)
        circles.push(region.circle.x, region.circle.y, region.circle.radius - marginMm + half + EDGE_MM);
    }
    const sides: number[] = [];
    for (const { region, marginMm } of space.bounds) {
      for (const { nx, ny, offset } of region.sides) {
        const far = offset - marginMm + half + EDGE_MM;
        let needless = false;
        for (let c = 0; c < circles.length; c += 3) {
          const outmost = nx * (circles[c] as number) + ny * (circles[c + 1] as number) + (circles[c + 2] as number);
          if (outmost <= far) needless = true;
        }
        if (!needless) sides.push(nx, ny, far);
      }
    }
    const squares: number[] = [];
    const squareClears: number[] = [];
    const lines: number[] = [];
    const lineClears: number[] = [];
    const fences: number[] = [];
    const fenceClears: number[] = [];
    for (const { obstacle, clearanceFor } of space.standoffs) {
      // A piece that passes by in height needs no distance at all: a reach below zero never overlaps.
      const clear = pieceKinds.map((kind) => {
        const least = clearanceFor(kind.heightMm);
        return least < 0 ? -1e9 : least - half;
      });
      if (obstacle.kind === "square") {
        squares.push(obstacle.x, obstacle.y, obstacle.half, Math.cos(obstacle.turn), Math.sin(obstacle.turn));
        squareClears.push(...clear);
      } else if (obstacle.kind === "beyond") {
        fences.push(obstacle.nx, obstacle.ny, obstacle.offset);
        fenceClears.push(...clear);
      } else {
        lines.push(obstacle.x1, obstacle.y1, obstacle.x2 - obstacle.x1, obstacle.y2 - obstacle.y1);
        lineClears.push(...clear);
      }
    }
    this.circles = Float64Array.from(circles);
    this.sides = Float64Array.from(sides);
    this.squares = Float64Array.from(squares);
    this.lines = Float64Array.from(lines);
    this.squareClears = Float64Array.from(squareClears);
    this.lineClears = Float64Array.from(lineClears);
    this.fences = Float64Array.from(fences);
    this.fenceClears = Float64Array.from(fenceClears);
    this.squareCount = squares.length / 5;
    this.lineCount = lines.length / 4;
    this.fenceCount = fences.length / 3;
    this.within = this.widestWithin();
  }

  /** True where a piece that reaches so far from (x, y) cannot touch any edge. */
  wellWithin(x: number, y: number, reach: number): boolean {
    const room = this.within - reach;
    return room > 0 && x * x + y * y <= room * room;
  }

  farFromSquare(o: number, kind: number, x: number, y: number, reach: number): boolean {
    const dx = x - (this.squares[5 * o] as number);
    const dy = y - (this.squares[5 * o + 1] as number);
    const near = reach + this.squareClear(o, kind) + (this.squares[5 * o + 2] as number) * Math.SQRT2;
    if (near <= 0) return true;
    return dx * dx + dy * dy >= near * near;
  }

  farFromLine(o: number, kind: number, x: number, y: number, reach: number): boolean {
    const near = reach + this.lineClear(o, kind);
    if (near <= 0) return true;
    const ux = this.lines[4 * o + 2] as number;
    const uy = this.lines[4 * o + 3] as number;
    const dx = x - (this.lines[4 * o] as number) - ux / 2;
    const dy = y - (this.lines[4 * o + 1] as number) - uy / 2;
    const whole = near + Math.sqrt(ux * ux + uy * uy) / 2;
    return dx * dx + dy * dy >= whole * whole;
  }

  /** The least distance from a square, less half the gap, for a kind of piece. */
  squareClear(o: number, kind: number): number {
    return this.squareClears[o * this.kinds + kind] as number;
  }

  /** The least distance from a line, less half the gap; far below zero for a kind that passes it in height. */
  lineClear(o: number, kind: number): number {
    return this.lineClears[o * this.kinds + kind] as number;
  }

  /** The least distance from a fence, less half the gap; far below zero for a kind that may pass it. */
  fenceClear(o: number, kind: number): number {
    return this.fenceClears[o * this.kinds + kind] as number;
  }

  private widestWithin(): number {
    let within = Number.POSITIVE_INFINITY;
    for (let o = 0; o < this.sides.length; o += 3) within = Math.min(within, this.sides[o + 2] as number);
    for (let o = 0; o < this.circles.length; o += 3) {
      const off = Math.hypot(this.circles[o] as number, this.circles[o + 1] as number);
      within = Math.min(within, (this.circles[o + 2] as number) - off);
    }
    return within;
  }
}
