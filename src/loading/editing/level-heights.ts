import type { Post } from "../../kiln/furniture.ts";
import type { PostInPlace } from "../checker/posts-in-place.ts";
import { sceneOf } from "../checker/scene.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { postKinds, stackHeights } from "../planner/post-stacks.ts";

/** Posts that stand one on another, lowest first, and how high they reach. */
export interface PostStack {
  readonly heightsMm: readonly number[];
  readonly totalMm: number;
}

const POSTS_A_SHELF = 3;

/**
 * The stacks of one or two posts of which three can be made from a stock, lowest first; of those that reach the same
 * height, the first that the planner too would take.
 */
export function stacksOf(posts: readonly Post[]): PostStack[] {
  const kinds = postKinds(posts);
  const thrice = (parts: readonly number[]): boolean =>
    parts.every((part) => {
      const used = parts.filter((each) => each === part).length;
      return (kinds[part]?.count ?? 0) >= POSTS_A_SHELF * used;
    });
  return stackHeights(kinds).flatMap(({ totalMm, ways }): PostStack[] => {
    const way = ways.find(({ parts }) => thrice(parts));
    return way ? [{ heightsMm: way.parts.map((part) => kinds[part]?.heightMm ?? 0), totalMm }] : [];
  });
}

/** The stock less what the other levels of a plan use. */
export function postsLeft(request: LoadRequest, plan: LoadPlan, besidesLevel: number | null): Post[] {
  const used = new Map<number, number>();
  plan.levels.forEach((level, index) => {
    if (index === besidesLevel) return;
    for (const { heightsMm } of level.posts) for (const each of heightsMm) used.set(each, (used.get(each) ?? 0) + 1);
  });
  return request.furniture.posts.map((post) => {
    const taken = Math.min(post.count, used.get(post.heightMm) ?? 0);
    used.set(post.heightMm, (used.get(post.heightMm) ?? 0) - taken);
    return { ...post, count: post.count - taken };
  });
}

/** A height a level can have: the stack under it, and where its face comes to be. */
export interface LevelHeight extends PostStack {
  readonly topMm: number;
}

/**
 * The heights that a level can have with the posts that are not under other levels, lowest first.
 *
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function levelHeights(request: LoadRequest, plan: LoadPlan, level: number): LevelHeight[] {
  const scene = sceneOf(request, plan);
  const shelf = scene.shelves[level];
  if (!shelf) return [];
  const baseMm = baseOf(scene.posts, level);
  return stacksOf(postsLeft(request, plan, level)).map((stack) => ({
    ...stack,
    topMm: baseMm + stack.totalMm + shelf.kind.thicknessMm,
  }));
}

/** What a level's posts stand on, above the floor: the highest of it where they stand on several shelves. */
export const baseOf = (posts: readonly PostInPlace[], level: number): number =>
  posts.filter((post) => post.level === level).reduce((base, post) => Math.max(base, post.baseMm), 0);
