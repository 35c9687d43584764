import type { Chamber } from "./chamber.ts";

const MM3_PER_LITRE = 1e6;

/** What the chamber holds, floor to lid, in litres. */
export function chamberVolumeLitres(chamber: Chamber): number {
  return (chamberFloorMm2(chamber) * chamber.depthMm) / MM3_PER_LITRE;
}

/** The chamber's floor, seen from above, in square millimetres. */
export function chamberFloorMm2(chamber: Chamber): number {
  if (chamber.shape === "round") return (Math.PI * chamber.diameterMm ** 2) / 4;
  if (chamber.shape === "rectangle") return chamber.widthMm * chamber.lengthMm;
  return (chamber.sides * Math.tan(Math.PI / chamber.sides) * chamber.acrossFlatsMm ** 2) / 4;
}
