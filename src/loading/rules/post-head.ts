import { mmText, sentenceCase, tooLittle } from "../checker/broken.ts";
import { marginInsideMm } from "../solids/plan-distance.ts";
import { widestMm } from "../solids/upright.ts";
import type { Rule } from "./rule.ts";

/** Every post's head is wholly under the shelf it carries. */
export const postHead: Rule = {
  name: "postHead",
  reason: "A shelf that bears on part of a post cracks at its edge or slides off it. Common practice, no source.",
  setting: null,
  defaultMm: 0,
  find: ({ posts, shelves }) =>
    posts.flatMap((post) => {
      const shelf = shelves[post.level]!;
      const head = post.stack.at(-1)!;
      const found = marginInsideMm(head.core, widestMm(head), shelf.region);
      if (!tooLittle(found, 0)) return [];
      return [
        {
          rule: "postHead",
          level: post.level,
          things: [post.name, shelf.name],
          foundMm: found,
          allowedMm: 0,
          message: `${sentenceCase(post.name)} passes the edge of the shelf it carries by ${mmText(-found, 0)}; its whole head must be under it.`,
          places: [post.place, shelf.place],
        },
      ];
    }),
};
