import { mmText, standsFrom, tooLittle } from "../checker/broken.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { mouthDistanceMm } from "../solids/mouth-distance.ts";
import { pieceRule } from "./rule.ts";

/** Ware to the mouth of every spyhole that is open while firing. */
export const spyhole = pieceRule({
  name: "spyholeMm",
  reason:
    "Cold air comes in at an open spyhole: a pot close to it may crack or fire unevenly, and hides the cones. Common practice, no source.",
  setting: "spyholeMm",
  defaultMm: GLAZE_WARE_RULES.spyholeMm,
  findForPiece: (scene, piece) => {
    const least = scene.rules.spyholeMm;
    return scene.mouths.flatMap(({ name, mouth, place }) => {
      const found = mouthDistanceMm(piece.solid, mouth, least);
      if (!tooLittle(found, least)) return [];
      return [
        {
          rule: "spyholeMm",
          level: piece.level,
          things: [piece.thing, name],
          foundMm: found,
          allowedMm: least,
          message: `${piece.name} ${standsFrom(found, name, least)}; ${mmText(least)} is the least.`,
          places: [piece.place, place],
        },
      ];
    });
  },
});
