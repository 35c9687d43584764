import { type Broken, CLEARANCE_TOLERANCE_MM, mmText, type Place, sentenceCase } from "../checker/broken.ts";
import type { PostInPlace } from "../checker/posts-in-place.ts";
import type { Scene, ShelfInPlace } from "../checker/scene.ts";
import { type Solid, solidDistanceMm } from "../solids/upright.ts";
import type { Rule } from "./rule.ts";

/**
 * No two pieces of furniture fill the same space: shelf and shelf, shelf and post, post and post. Half shelves may touch
 * along their straight sides. Ware is the gap's and the headroom's.
 */
export const overlap: Rule = {
  name: "overlap",
  reason: "Two things cannot stand in one place.",
  setting: null,
  defaultMm: 0,
  find: ({ shelves, posts }: Scene) => [
    ...shelves.flatMap((shelf, i) => [
      ...shelves.slice(i + 1).flatMap((other) => meeting(shelf, other)),
      ...posts.filter((post) => !meetsByRight(post, shelf)).flatMap((post) => meeting(shelf, post)),
    ]),
    ...posts.flatMap((post, i) => posts.slice(i + 1).flatMap((other) => meeting(post, other))),
  ],
};

/** A post touches the shelf it carries and the one it stands on; whether it does so rightly is the post heights' rule. */
const meetsByRight = (post: PostInPlace, shelf: ShelfInPlace): boolean =>
  post.level === shelf.level || post.standsOn === shelf.level;

interface Thing {
  readonly level: number;
  readonly name: string;
  readonly solid: Solid;
  readonly place: Place;
}

function meeting(a: Thing, b: Thing): Broken[] {
  const found = solidDistanceMm(a.solid, b.solid, 0);
  if (found >= -CLEARANCE_TOLERANCE_MM) return [];
  return [
    {
      rule: "overlap",
      level: Math.max(a.level, b.level),
      things: [a.name, b.name],
      foundMm: found,
      allowedMm: 0,
      message: `${sentenceCase(a.name)} and ${b.name} run ${mmText(-found, 0)} into one another.`,
      places: [a.place, b.place],
    },
  ];
}
