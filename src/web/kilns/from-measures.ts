import type { Chamber } from "../../kiln/chamber.ts";
import type { Furniture } from "../../kiln/furniture.ts";
import type { KilnDraft } from "./kiln-draft.ts";

/** Air left round the shelf of a kiln that only its measures are known of. Common practice, no source. */
const SHELF_AIR_MM = 18;
const ROUNDED_TO_MM = 5;

/** A kiln of which only the chamber is known, with one full shelf size that fits and a usual post kit, to go on from. */
export function kilnFromMeasures(name: string, chamber: Chamber): KilnDraft {
  return { kiln: { name, chamber }, furniture: usualFurniture(chamber), rules: {} };
}

function usualFurniture(chamber: Chamber): Furniture {
  const across = (wallMm: number): number =>
    Math.max(ROUNDED_TO_MM, Math.floor((wallMm - 2 * SHELF_AIR_MM) / ROUNDED_TO_MM) * ROUNDED_TO_MM);
  const of = { name: "full shelf", count: 3 };
  const widest = chamber.shape === "rectangle" ? Math.max(chamber.widthMm, chamber.lengthMm) : acrossOf(chamber);
  // Wider shelves are made thicker.
  const thicknessMm = widest < 350 ? 12 : widest < 500 ? 15 : 18;
  const posts = [25, 50, 75, 100, 125, 150]
    .filter((heightMm) => heightMm < chamber.depthMm)
    .map((heightMm) => ({ heightMm, widthMm: widest < 350 ? 25 : 35, shape: "square" as const, count: 6 }));
  return {
    shelves: [
      chamber.shape === "rectangle"
        ? {
            ...of,
            shape: "rectangle",
            widthMm: across(chamber.widthMm),
            lengthMm: across(chamber.lengthMm),
            thicknessMm,
          }
        : { ...of, shape: "disc", diameterMm: across(acrossOf(chamber)), thicknessMm },
    ],
    posts: posts.length > 0 ? posts : [{ heightMm: 12, widthMm: 25, shape: "square", count: 6 }],
  };
}

const acrossOf = (chamber: Exclude<Chamber, { shape: "rectangle" }>): number =>
  chamber.shape === "round" ? chamber.diameterMm : chamber.acrossFlatsMm;

/** The chamber in another shape, as wide and deep as it was. */
export function reshapedChamber(chamber: Chamber, shape: Chamber["shape"]): Chamber {
  const { depthMm } = chamber;
  const across = chamber.shape === "rectangle" ? chamber.widthMm : acrossOf(chamber);
  if (shape === "round") return { shape, diameterMm: across, depthMm };
  if (shape === "polygon") return { shape, sides: 8, acrossFlatsMm: across, depthMm };
  return { shape, widthMm: across, lengthMm: across, depthMm };
}
