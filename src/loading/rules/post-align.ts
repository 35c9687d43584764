import { mmText, sentenceCase, tooLittle } from "../checker/broken.ts";
import type { PostInPlace } from "../checker/posts-in-place.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import type { Rule } from "./rule.ts";

/** Every post that stands on a shelf stands above a post that carries that shelf, its axis close to that one's. */
export const postAlign: Rule = {
  name: "postAlignMm",
  reason:
    "A post that stands between the posts beneath bends the shelf it stands on, and hot shelves creep: posts go one above another down to the floor. Common practice, no source.",
  setting: "postAlignMm",
  defaultMm: GLAZE_WARE_RULES.postAlignMm,
  find: ({ posts, rules }) =>
    posts.flatMap((post) => {
      if (post.standsOn === null) return [];
      const most = rules.postAlignMm;
      const nearest = nearestBeneath(posts, post);
      if (nearest && !tooLittle(most, nearest.offMm)) return [];
      const off = nearest
        ? `stands ${mmText(nearest.offMm, most)} off the axis of ${nearest.post.name}, the nearest beneath it; ${mmText(most)} is the most.`
        : `stands on level ${post.standsOn + 1}, which has no post beneath it.`;
      return [
        {
          rule: "postAlignMm",
          level: post.level,
          things: [post.name, ...(nearest ? [nearest.post.name] : [])],
          foundMm: nearest?.offMm ?? null,
          allowedMm: most,
          message: `${sentenceCase(post.name)} ${off}`,
          places: [post.place, ...(nearest ? [nearest.post.place] : [])],
        },
      ];
    }),
};

function nearestBeneath(
  posts: readonly PostInPlace[],
  above: PostInPlace,
): { post: PostInPlace; offMm: number } | null {
  return posts
    .filter((post) => post.level === above.standsOn)
    .map((post) => ({ post, offMm: Math.hypot(post.x - above.x, post.y - above.y) }))
    .reduce<{ post: PostInPlace; offMm: number } | null>(
      (best, each) => (best && best.offMm <= each.offMm ? best : each),
      null,
    );
}
