import type { Ware } from "./ware.ts";

// A thrown pot's wall, and its clay's density once fired. Common practice, no source; 1900–2300 kg/m³ spans
// earthenware to vitrified stoneware (Wareboard's materials table).
const WALL_MM = 6;
const CLAY_KG_PER_MM3 = 2.2e-6;

/** One piece's mass in kilograms: as given, else a wall 6 mm thick over its side and foot. */
export function pieceMassKg(ware: Ware): number {
  if (ware.massKg !== null) return ware.massKg;
  const radius = ware.diameterMm / 2;
  const wall = Math.min(WALL_MM, radius, ware.heightMm);
  const foot = Math.PI * radius * radius * wall;
  const side = 2 * Math.PI * Math.max(0, radius - wall / 2) * wall * (ware.heightMm - wall);
  return (foot + side) * CLAY_KG_PER_MM3;
}
