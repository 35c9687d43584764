import { CLEARANCE_TOLERANCE_MM, mmText, standsFrom, tooLittle } from "../checker/broken.ts";
import type { PieceInPlace, Scene, ShelfInPlace } from "../checker/scene.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { solidDistanceMm } from "../solids/upright.ts";
import { pieceRule } from "./rule.ts";

/** Ware to every shelf whose face is higher than the one it stands on: the one above, or a half shelf set higher beside it. */
export const headroom = pieceRule({
  name: "headroomMm",
  reason:
    "Shelves sag and glaze bubbles at the rim: a piece that touches the shelf above lifts it or sticks to it. Common practice, no source.",
  setting: "headroomMm",
  defaultMm: GLAZE_WARE_RULES.headroomMm,
  findForPiece: (scene, piece) => {
    const least = scene.rules.headroomMm;
    return shelvesAbove(scene, piece).flatMap((shelf) => {
      const found = solidDistanceMm(piece.solid, shelf.solid, least);
      if (!tooLittle(found, least)) return [];
      return [
        {
          rule: "headroomMm",
          level: piece.level,
          things: [piece.thing, shelf.name],
          foundMm: found,
          allowedMm: least,
          message: `${piece.name} ${standsFrom(found, shelf.name, least)}; ${mmText(least)} is the least.`,
          places: [piece.place, shelf.place],
        },
      ];
    });
  },
});

/** The shelves that a piece could touch from below or from the side. */
export function shelvesAbove(scene: Scene, piece: PieceInPlace): ShelfInPlace[] {
  const ownTop = scene.shelves[piece.level]!.topMm;
  return scene.shelves.filter((shelf) => shelf.level !== piece.level && shelf.topMm > ownTop + CLEARANCE_TOLERANCE_MM);
}
