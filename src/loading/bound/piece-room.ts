import { type PieceSolid, pieceSolid } from "../../ware/solid.ts";
import type { Ware } from "../../ware/ware.ts";

/** What the bound needs to know of a kind of piece. */
export interface PieceRoom {
  readonly count: number;
  readonly value: number;
  /** Foot, or cookie's underside, to top. */
  readonly heightMm: number;
  /** Its widest place, arms left out. */
  readonly widestMm: number;
  readonly solid: PieceSolid;
}

/** A kind of ware, measured for the bound. */
export function pieceRoom(ware: Ware): PieceRoom {
  const solid = pieceSolid(ware);
  return {
    count: ware.count,
    value: ware.value,
    heightMm: solid.heightMm,
    widestMm: Math.max(solid.cookie?.radiusMm ?? 0, ...solid.rings.map(([, radius]) => radius)),
    solid,
  };
}

/**
 * The disc a piece fills at a height above its shelf, grown by half the gap; 0 where it does not reach so high.
 * Two pieces of one shelf keep the gap in space, so at any one height these discs cannot overlap.
 */
export function discAtMm({ solid }: PieceRoom, heightMm: number, gapMm: number): number {
  let radius = -1;
  const { rings, cookie } = solid;
  if (cookie && heightMm <= cookie.topMm) radius = cookie.radiusMm;
  for (let i = 0; i + 1 < rings.length; i++) {
    const [low, lowOut] = rings[i]!;
    const [high, highOut] = rings[i + 1]!;
    if (heightMm < low || heightMm > high) continue;
    const at =
      high - low < 1e-9 ? Math.max(lowOut, highOut) : lowOut + ((highOut - lowOut) * (heightMm - low)) / (high - low);
    radius = Math.max(radius, at);
  }
  return radius < 0 ? 0 : radius + gapMm / 2;
}

const STEPS = 1440;
// What the sum over so many directions may be off by, of the whole: far more than it is (checked against circles).
const SAFE_SHARE = 1e-4;

/** The area of a piece's outline at a height, arms included, grown by half the gap. Never too large. mm². */
export function outlineAreaMm2(room: PieceRoom, heightMm: number, gapMm: number): number {
  const disc = discAtMm(room, heightMm, gapMm);
  if (disc === 0) return 0;
  const arms = room.solid.stadiums.filter((arm) => heightMm >= arm.bottomMm && heightMm <= arm.topMm);
  if (arms.length === 0) return Math.PI * disc * disc;
  let area = 0;
  for (let i = 0; i < STEPS; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / STEPS;
    let reach = disc;
    // Disc and stadiums all hold every point between themselves and the axis: together too.
    for (const arm of arms)
      reach = Math.max(reach, stadiumReachMm(arm.lengthMm, arm.radiusMm + gapMm / 2, angle - arm.angle));
    area += (reach * reach * Math.PI) / STEPS;
  }
  return area * (1 - SAFE_SHARE);
}

/** From the axis to a stadium's edge along a direction. */
function stadiumReachMm(length: number, radius: number, angle: number): number {
  const cos = Math.cos(angle);
  const sin = Math.abs(Math.sin(angle));
  if (cos <= 0) return radius;
  // Out past the straight side, before its far end begins.
  if (sin > 1e-12 && (radius * cos) / sin <= length) return radius / sin;
  return length * cos + Math.sqrt(Math.max(0, radius * radius - length * length * sin * sin));
}
