import type { ConvexRegion } from "../../kiln/convex-region.ts";

/** Something a piece must keep clear of on its level, seen from above. Millimetres; turns in radians. */
export type Obstacle =
  | { readonly kind: "square"; readonly x: number; readonly y: number; readonly half: number; readonly turn: number }
  | { readonly kind: "line"; readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }
  /** All beyond a straight line: pieces stay where nx·x + ny·y ≤ offset, (nx, ny) of length one. */
  | { readonly kind: "beyond"; readonly nx: number; readonly ny: number; readonly offset: number };

/** An obstacle with the least distance each piece must keep from it; below zero where a piece passes it by in height. */
export interface Standoff {
  readonly obstacle: Obstacle;
  /** Least distance from a piece's outline, for a piece that stands from the shelf's face up to `heightMm`. */
  readonly clearanceFor: (heightMm: number) => number;
}

/** Where pieces may stand on one level: inside every region with its margin, and clear of every obstacle. */
export interface LevelSpace {
  readonly bounds: readonly { readonly region: ConvexRegion; readonly marginMm: number }[];
  readonly standoffs: readonly Standoff[];
  readonly gapMm: number;
}
