import { mmText, tooLittle } from "../checker/broken.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import type { Rule } from "./rule.ts";

/** Air under the lowest shelf. With half shelves side by side there are two lowest ones, so every shelf is asked. */
export const floorAir: Rule = {
  name: "floorAirMm",
  reason:
    "Heat has to go round beneath the lowest shelf, and glaze that drips needs somewhere to fall: an inch of air. Common practice, no source.",
  setting: "floorAirMm",
  defaultMm: GLAZE_WARE_RULES.floorAirMm,
  find: ({ shelves, rules }) =>
    shelves
      .filter((shelf) => tooLittle(shelf.undersideMm, rules.floorAirMm))
      .map((shelf) => ({
        rule: "floorAirMm",
        level: shelf.level,
        things: [shelf.name, "floor"],
        foundMm: shelf.undersideMm,
        allowedMm: rules.floorAirMm,
        message: `The underside of ${shelf.name} is ${mmText(shelf.undersideMm, rules.floorAirMm)} above the floor; ${mmText(rules.floorAirMm)} is the least.`,
        places: [shelf.place, { kind: "chamber" }],
      })),
};
