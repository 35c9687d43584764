import { planDistanceMm } from "../../../loading/solids/plan-distance.ts";
import { widestMm } from "../../../loading/solids/upright.ts";
import type { SheetLevel, SheetLoad } from "../../../sheets/sheet-load.ts";

/** Half shelves touch along their straight sides. */
const TOUCHING_MM = 1;
const SAME_HEIGHT_MM = 1;

/** Levels whose shelf lies beside this one's and not over or under it, as two half shelves do. */
export function levelsBeside({ levels }: SheetLoad, level: SheetLevel): SheetLevel[] {
  const own = level.shelf.solid.parts[0];
  return levels.filter((other) => {
    const slab = other.shelf.solid.parts[0];
    if (other.index === level.index || !own || !slab) return false;
    return planDistanceMm(own.core, slab.core) - widestMm(own) - widestMm(slab) > -TOUCHING_MM;
  });
}

/** A level and those at its height, in order: from the side they look like one. */
export const levelsAtHeightOf = ({ levels }: SheetLoad, level: SheetLevel): SheetLevel[] =>
  levels.filter(({ shelf }) => Math.abs(shelf.topMm - level.shelf.topMm) < SAME_HEIGHT_MM);
