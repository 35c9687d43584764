import { radians } from "../../measures/angle.ts";
import { pieceSolid } from "../../ware/solid.ts";
import type { Ware } from "../../ware/ware.ts";
import { lineShape, pointShape } from "./plan-shape.ts";
import { prism, type Solid, solidOf, type Upright } from "./upright.ts";

/**
 * A piece standing at (x, y), turned, its foot or cookie on a face `standsAtMm` above the floor: body, cookie, handle
 * and spout. Millimetres, degrees.
 */
export function wareSolid(ware: Ware, x: number, y: number, turnDeg: number, standsAtMm: number): Solid {
  const piece = pieceSolid(ware);
  const axis = pointShape(x, y);
  const parts: Upright[] = [
    { core: axis, rings: piece.rings.map(([height, radius]) => [standsAtMm + height, radius] as const) },
  ];
  if (piece.cookie) parts.push(prism(axis, piece.cookie.radiusMm, standsAtMm, standsAtMm + piece.cookie.topMm));
  for (const part of piece.stadiums) {
    const angle = part.angle + radians(turnDeg);
    const farX = x + part.lengthMm * Math.cos(angle);
    const farY = y + part.lengthMm * Math.sin(angle);
    parts.push(prism(lineShape(x, y, farX, farY), part.radiusMm, standsAtMm + part.bottomMm, standsAtMm + part.topMm));
  }
  return solidOf(x, y, parts);
}
