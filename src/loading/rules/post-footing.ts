import { mmText, sentenceCase, tooLittle } from "../checker/broken.ts";
import type { PostInPlace } from "../checker/posts-in-place.ts";
import type { Scene } from "../checker/scene.ts";
import { marginInsideMm } from "../solids/plan-distance.ts";
import { widestMm } from "../solids/upright.ts";
import { wallDistanceMm } from "./gap.ts";
import type { Rule } from "./rule.ts";

/** Every post stands wholly on the floor or wholly on a shelf, and inside the chamber all the way up. */
export const postFooting: Rule = {
  name: "postFooting",
  reason: "A post half over an edge tips, and the load with it. Common practice, no source.",
  setting: null,
  defaultMm: 0,
  find: (scene) =>
    scene.posts.flatMap((post) => {
      const { found, on } = footing(scene, post);
      if (!tooLittle(found, 0)) return [];
      return [
        {
          rule: "postFooting",
          level: post.level,
          things: [post.name, on],
          foundMm: found,
          allowedMm: 0,
          message: `${sentenceCase(post.name)} passes the edge of ${on} by ${mmText(-found, 0)}; it must stand wholly on it.`,
          places: [post.place, post.standsOn === null ? { kind: "chamber" } : scene.shelves[post.standsOn]!.place],
        },
      ];
    }),
};

function footing(scene: Scene, post: PostInPlace): { found: number; on: string } {
  const toWall = wallDistanceMm(scene, post.solid);
  if (post.standsOn === null) return { found: toWall, on: "the floor" };
  const shelf = scene.shelves[post.standsOn]!;
  const foot = post.stack[0]!;
  const onShelf = marginInsideMm(foot.core, widestMm(foot), shelf.region);
  return onShelf <= toWall ? { found: onShelf, on: shelf.name } : { found: toWall, on: "the chamber" };
}
