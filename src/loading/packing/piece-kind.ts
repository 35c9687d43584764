import { pieceMassKg } from "../../ware/mass.ts";
import { pieceSolid } from "../../ware/solid.ts";
import type { Ware } from "../../ware/ware.ts";

/** A handle or spout seen from above: a stadium from the piece's axis. Radians, millimetres. */
export interface Arm {
  readonly angle: number;
  readonly length: number;
  readonly radius: number;
}

/**
 * A kind of piece as the search sees it: from above, a disc about its axis (its widest place, cookie included) and arms.
 * A profile is taken at its widest all the way up, which can only leave more room than the rules ask.
 */
export interface PieceKind {
  readonly radius: number;
  readonly arms: readonly Arm[];
  /** From the shelf's face to its top, cookie included. */
  readonly heightMm: number;
  readonly massKg: number;
  /** Seen from above, its disc and what its arms add, each grown by half the gap: the room it takes. */
  readonly areaMm2: number;
  /** Millimetres of swing that the search counts for a radian of turn; zero where turning changes nothing. */
  readonly swingMm: number;
}

/** The search's view of a kind of ware, for a gap between pieces in millimetres. */
export function pieceKind(ware: Ware, gapMm: number): PieceKind {
  const solid = pieceSolid(ware);
  const radius = Math.max(solid.cookie?.radiusMm ?? 0, ...solid.rings.map(([, ring]) => ring), ware.diameterMm / 2);
  const arms = solid.stadiums.map((part) => ({ angle: part.angle, length: part.lengthMm, radius: part.radiusMm }));
  const grown = radius + gapMm / 2;
  const armsArea = arms.reduce((sum, arm) => {
    const wide = 2 * (arm.radius + gapMm / 2);
    return sum + Math.max(0, arm.length + arm.radius - radius) * wide * 0.9;
  }, 0);
  const reach = Math.max(0, ...arms.map((arm) => arm.length + arm.radius));
  return {
    swingMm: reach * 0.7,
    radius,
    arms,
    heightMm: solid.heightMm,
    massKg: pieceMassKg(ware),
    areaMm2: Math.PI * grown * grown + armsArea,
  };
}
