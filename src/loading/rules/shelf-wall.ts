import { mmText, sentenceCase, tooLittle } from "../checker/broken.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { wallDistanceMm } from "./gap.ts";
import type { Rule } from "./rule.ts";

/** Shelf to the chamber wall. */
export const shelfWall: Rule = {
  name: "shelfWallMm",
  reason:
    "Hot air has to pass between shelf and wall, and a shelf against the brick chips it or touches the elements. Common practice, no source.",
  setting: "shelfWallMm",
  defaultMm: GLAZE_WARE_RULES.shelfWallMm,
  find: (scene) => {
    const least = scene.rules.shelfWallMm;
    return scene.shelves.flatMap((shelf) => {
      const found = wallDistanceMm(scene, shelf.solid);
      if (!tooLittle(found, least)) return [];
      const where =
        found < 0 ? `passes the chamber wall by ${mmText(-found)}` : `is ${mmText(found, least)} from the chamber wall`;
      return [
        {
          rule: "shelfWallMm",
          level: shelf.level,
          things: [shelf.name, "chamber wall"],
          foundMm: found,
          allowedMm: least,
          message: `${sentenceCase(shelf.name)} ${where}; ${mmText(least)} is the least.`,
          places: [shelf.place, { kind: "chamber" }],
        },
      ];
    });
  },
};
