import type { PieceKind } from "./piece-kind.ts";

/** Left between everything beyond the rules, so that rounding a place to a thousandth never breaks one. */
export const SPARE_MM = 0.02;
/** A handle and a spout. */
export const MOST_ARMS = 2;

/** The kinds of piece as flat arrays by kind, every radius grown by half the gap and what is spared. */
export interface PieceTable {
  readonly disc: Float64Array;
  readonly swing: Float64Array;
  readonly reach: Float64Array;
  readonly armCount: Int32Array;
  /** By kind and arm: the vector from the axis to the middle of the arm's far end, unturned. */
  readonly armX: Float64Array;
  readonly armY: Float64Array;
  readonly armRadius: Float64Array;
}

export function pieceTable(kinds: readonly PieceKind[], halfGapMm: number): PieceTable {
  const grown = halfGapMm + SPARE_MM;
  const perArm = (of: (arm: PieceKind["arms"][number]) => number): Float64Array => {
    const table = new Float64Array(kinds.length * MOST_ARMS);
    kinds.forEach((kind, k) => {
      kind.arms.forEach((arm, a) => {
        table[k * MOST_ARMS + a] = of(arm);
      });
    });
    return table;
  };
  return {
    disc: Float64Array.from(kinds, (kind) => kind.radius + grown),
    swing: Float64Array.from(kinds, (kind) => kind.swingMm),
    reach: Float64Array.from(
      kinds,
      (kind) => Math.max(kind.radius, ...kind.arms.map((arm) => arm.length + arm.radius), 0) + grown,
    ),
    armCount: Int32Array.from(kinds, (kind) => kind.arms.length),
    armX: perArm((arm) => arm.length * Math.cos(arm.angle)),
    armY: perArm((arm) => arm.length * Math.sin(arm.angle)),
    armRadius: perArm((arm) => arm.radius + grown),
  };
}
