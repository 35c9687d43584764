import { mmText, tooLittle } from "../checker/broken.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { pieceRule } from "./rule.ts";

/** Top of ware to the lid. */
export const lid = pieceRule({
  name: "lidMm",
  reason:
    "The lid sheds grit, and a pot close under it fires unevenly: an inch of air above the tallest piece. Common practice, no source.",
  setting: "lidMm",
  defaultMm: GLAZE_WARE_RULES.lidMm,
  findForPiece: ({ rules, depthMm }, piece) => {
    const found = depthMm - piece.solid.topMm;
    if (!tooLittle(found, rules.lidMm)) return [];
    const where =
      found < 0
        ? `stands ${mmText(-found)} above the chamber's rim`
        : `stands ${mmText(found, rules.lidMm)} from the lid`;
    return [
      {
        rule: "lidMm",
        level: piece.level,
        things: [piece.thing, "lid"],
        foundMm: found,
        allowedMm: rules.lidMm,
        message: `${piece.name} ${where}; ${mmText(rules.lidMm)} is the least.`,
        places: [piece.place, { kind: "chamber" }],
      },
    ];
  },
});
