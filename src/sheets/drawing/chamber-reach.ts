import type { Chamber } from "../../kiln/chamber.ts";

/** How far the chamber reaches from its axis to the right (x) and to the far side (y). Millimetres. */
export function chamberReach(chamber: Chamber): { x: number; y: number } {
  if (chamber.shape === "round") return { x: chamber.diameterMm / 2, y: chamber.diameterMm / 2 };
  if (chamber.shape === "rectangle") return { x: chamber.widthMm / 2, y: chamber.lengthMm / 2 };
  const corner = chamber.acrossFlatsMm / 2 / Math.cos(Math.PI / chamber.sides);
  let x = 0;
  let y = 0;
  for (let i = 0; i < chamber.sides; i += 1) {
    const angle = ((2 * i + 1) * Math.PI) / chamber.sides;
    x = Math.max(x, Math.abs(corner * Math.cos(angle)));
    y = Math.max(y, Math.abs(corner * Math.sin(angle)));
  }
  return { x, y };
}
