import { HEIGHT_TOLERANCE_MM, mmText, sentenceCase } from "../checker/broken.ts";
import type { Rule } from "./rule.ts";

/**
 * The tops of the posts under a shelf meet its underside: base + posts + thickness = the level's height, for each of
 * them, so that together they carry it level. Posts of one shelf differ in length only where they stand at two heights.
 */
export const postHeights: Rule = {
  name: "postHeights",
  reason:
    "A shelf on unequal posts rocks or leans, and its ware slides. Common practice, no source; half a millimetre is left for rounding.",
  setting: null,
  defaultMm: HEIGHT_TOLERANCE_MM,
  find: ({ posts, shelves }) =>
    posts.flatMap((post) => {
      const shelf = shelves[post.level]!;
      const found = post.topMm + shelf.kind.thicknessMm;
      if (Math.abs(found - shelf.topMm) <= HEIGHT_TOLERANCE_MM + 1e-9) return [];
      const on = post.standsOn === null ? "the floor" : `level ${post.standsOn + 1}`;
      return [
        {
          rule: "postHeights",
          level: post.level,
          things: [post.name, shelf.name],
          foundMm: found,
          allowedMm: shelf.topMm,
          message: `${sentenceCase(post.name)}, standing on ${on}, brings the top of its shelf to ${mmText(found, shelf.topMm)}; the plan says ${mmText(shelf.topMm)}.`,
          places: [post.place, shelf.place],
        },
      ];
    }),
};
