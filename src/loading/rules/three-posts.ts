import { sentenceCase } from "../checker/broken.ts";
import type { Rule } from "./rule.ts";

/** Exactly three posts under every shelf, half shelves too. */
export const threePosts: Rule = {
  name: "threePosts",
  reason:
    "On three posts a shelf cannot rock and each carries its share; a fourth carries nothing or bends the shelf. Common practice, no source.",
  setting: null,
  defaultMm: null,
  find: ({ shelves, posts }) =>
    shelves.flatMap((shelf) => {
      const under = posts.filter((post) => post.level === shelf.level);
      if (under.length === 3) return [];
      const found = `${under.length === 0 ? "no" : under.length} post${under.length === 1 ? "" : "s"}`;
      return [
        {
          rule: "threePosts",
          level: shelf.level,
          things: [shelf.name, ...under.map((post) => post.name)],
          foundMm: null,
          allowedMm: null,
          message: `${sentenceCase(shelf.name)} stands on ${found}; every shelf stands on exactly three.`,
          places: [shelf.place, ...under.map((post) => post.place)],
        },
      ];
    }),
};
