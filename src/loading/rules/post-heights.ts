import { HEIGHT_TOLERANCE_MM, mmText } from "../checker/broken.ts";
import type { PostInPlace } from "../checker/posts-in-place.ts";
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
    shelves.flatMap((shelf) => {
      const wrong = posts.filter(
        (post) =>
          post.level === shelf.level && Math.abs(post.topMm - shelf.undersideMm) > HEIGHT_TOLERANCE_MM + ROUNDING_MM,
      );
      // Posts wrong by the same are one mistake: most often the level's own height.
      const topsMm = new Set(wrong.map((post) => post.topMm));
      return [...topsMm].map((topMm) => {
        const alike = wrong.filter((post) => post.topMm === topMm);
        const found = topMm + shelf.kind.thicknessMm;
        return {
          rule: "postHeights",
          level: shelf.level,
          things: [...alike.map((post) => post.name), shelf.name],
          foundMm: found,
          allowedMm: shelf.topMm,
          message: `${together(alike)} under level ${shelf.level + 1}, standing on ${footing(alike)}, would bring the top of the shelf to ${mmText(found, shelf.topMm)}; the plan says ${mmText(shelf.topMm)}.`,
          places: [...alike.map((post) => post.place), shelf.place],
        };
      });
    }),
};

// What adding a few heights loses in the last digits.
const ROUNDING_MM = 1e-9;

function together(posts: readonly PostInPlace[]): string {
  const numbers = posts.map((post) => String(post.post + 1));
  if (numbers.length === 1) return `Post ${numbers[0]}`;
  return `Posts ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`;
}

function footing(posts: readonly PostInPlace[]): string {
  const under = posts.map((post) => (post.standsOn === null ? "the floor" : `level ${post.standsOn + 1}`));
  return [...new Set(under)].join(" and ");
}
