import type { Chamber } from "../../kiln/chamber.ts";
import type { Shelf } from "../../kiln/furniture.ts";

/** A kind of shelf, and how far it can be shifted in the chamber. */
export interface ShelfPlay {
  readonly shelf: Shelf;
  /** The largest disc about its middle that lies on it. */
  readonly innerMm: number;
  /** How far the axis of a disc of a radius can stand from its middle, the disc wholly on it; below zero where none can. */
  readonly farthestAxisMm: (radiusMm: number) => number;
  /** How far its middle can lie from the kiln's axis. */
  readonly shiftMm: number;
  readonly areaMm2: number;
  readonly perimeterMm: number;
}

/** What can be said of a shelf however it lies; null where it cannot lie in the chamber at all. Half shelves: see `isHalf`. */
export function shelfPlay(chamber: Chamber, shelf: Shelf, wallMm: number): ShelfPlay | null {
  const shape = shelfShape(shelf);
  const shiftMm = chamberPlayMm(chamber, wallMm + shape.innerMm);
  return shiftMm === null ? null : { shelf, shiftMm, ...shape };
}

function shelfShape(shelf: Shelf): Omit<ShelfPlay, "shelf" | "shiftMm"> {
  switch (shelf.shape) {
    case "disc": {
      const radius = shelf.diameterMm / 2;
      return {
        innerMm: radius,
        farthestAxisMm: (r) => radius - r,
        areaMm2: Math.PI * radius * radius,
        perimeterMm: 2 * Math.PI * radius,
      };
    }
    case "polygon": {
      const inner = shelf.acrossFlatsMm / 2;
      const half = Math.PI / shelf.sides;
      return {
        innerMm: inner,
        farthestAxisMm: (r) => (inner - r) / Math.cos(half),
        areaMm2: shelf.sides * inner * inner * Math.tan(half),
        perimeterMm: 2 * shelf.sides * inner * Math.tan(half),
      };
    }
    case "rectangle": {
      const x = shelf.widthMm / 2;
      const y = shelf.lengthMm / 2;
      return {
        innerMm: Math.min(x, y),
        farthestAxisMm: (r) => (r > Math.min(x, y) ? -1 : Math.hypot(x - r, y - r)),
        areaMm2: 4 * x * y,
        perimeterMm: 4 * (x + y),
      };
    }
    case "half-disc": {
      // Its middle is taken on the straight side, where no disc lies about it: nothing is claimed of where it lies.
      const radius = shelf.diameterMm / 2;
      return {
        innerMm: 0,
        farthestAxisMm: (r) => radius - r,
        areaMm2: (Math.PI * radius * radius) / 2,
        perimeterMm: (Math.PI + 2) * radius,
      };
    }
  }
}

/** How far from the axis the middle of a disc can lie that keeps inside the chamber's walls; null where it cannot. */
function chamberPlayMm(chamber: Chamber, discMm: number): number | null {
  if (chamber.shape === "rectangle") {
    const x = chamber.widthMm / 2 - discMm;
    const y = chamber.lengthMm / 2 - discMm;
    return x < 0 || y < 0 ? null : Math.hypot(x, y);
  }
  const inner = (chamber.shape === "round" ? chamber.diameterMm : chamber.acrossFlatsMm) / 2 - discMm;
  if (inner < 0) return null;
  return chamber.shape === "round" ? inner : inner / Math.cos(Math.PI / chamber.sides);
}
