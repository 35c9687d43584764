import { mmText, tooLittle } from "../checker/broken.ts";
import type { Rule } from "./rule.ts";

/** No shelf or post above the chamber's rim. Ware is the lid rule's. */
export const chamberDepth: Rule = {
  name: "chamberDepth",
  reason: "The lid has to close. Common practice, no source.",
  setting: null,
  defaultMm: null,
  find: ({ shelves, posts, depthMm }) =>
    [...shelves, ...posts]
      .filter((thing) => tooLittle(depthMm, thing.topMm))
      .map((thing) => ({
        rule: "chamberDepth",
        level: thing.level,
        things: [thing.name],
        foundMm: thing.topMm,
        allowedMm: depthMm,
        message: `The top of ${thing.name} is ${mmText(thing.topMm, depthMm)} above the floor; the chamber is ${mmText(depthMm)} deep.`,
        places: [thing.place],
      })),
};
