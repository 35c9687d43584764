import { BadInput, shown } from "../../measures/bad-input.ts";
import { type Scene, sceneOf } from "../checker/scene.ts";
import type { LoadPlan, PlacedPost } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { levelAt, wholeTurn } from "./edit-pieces.ts";
import { firstPosts } from "./first-posts.ts";
import { baseOf } from "./level-heights.ts";
import { closePlan, type Edited, type OpenLevel, openPlan } from "./open-plan.ts";

/**
 * Stands a level on other posts, three alike; what stands above comes up or down with it.
 *
 * @param heightsMm the stack under each corner, lowest first
 * @throws BadInput where there is no such level
 */
export function setLevelHeight(
  request: LoadRequest,
  plan: LoadPlan,
  level: number,
  heightsMm: readonly number[],
): Edited {
  const scene = sceneOf(request, plan);
  const levels = openPlan(plan);
  const changed = levelAt(levels, level);
  const thickness = (scene.shelves[level] as Scene["shelves"][number]).kind.thicknessMm;
  const topMm = baseOf(scene.posts, level) + sum(heightsMm) + thickness;
  changed.posts =
    changed.posts.length > 0
      ? changed.posts.map((post) => ({ ...post, heightsMm: [...heightsMm] }))
      : firstPosts(request, { ...changed, topMm }, heightsMm);
  lift(levels, [level, ...levelsOn(scene, level)], topMm - changed.topMm);
  return closePlan(request, plan, levels);
}

/** Moves a shelf on its posts, which stay. */
export function moveShelf(request: LoadRequest, plan: LoadPlan, level: number, xMm: number, yMm: number): Edited {
  const levels = openPlan(plan);
  Object.assign(levelAt(levels, level), { xMm, yMm });
  return closePlan(request, plan, levels);
}

/** Turns a shelf about its own middle to a direction; its posts and its ware stay. */
export function turnShelf(request: LoadRequest, plan: LoadPlan, level: number, turnDeg: number): Edited {
  const levels = openPlan(plan);
  levelAt(levels, level).turnDeg = wholeTurn(turnDeg);
  return closePlan(request, plan, levels);
}

/** Lays another kind of shelf on a level's posts; a thicker one lifts all that stands on it. */
export function changeShelf(request: LoadRequest, plan: LoadPlan, level: number, shelf: string): Edited {
  const scene = sceneOf(request, plan);
  const levels = openPlan(plan);
  const changed = levelAt(levels, level);
  const thicker = kindOf(request, shelf).thicknessMm - kindOf(request, changed.shelf).thicknessMm;
  changed.shelf = shelf;
  lift(levels, [level, ...levelsOn(scene, level)], thicker);
  return closePlan(request, plan, levels);
}

/** Where a new level comes, and what it is made of. */
export interface NewLevel {
  /** The level it stands on; null for the floor. */
  readonly above: number | null;
  readonly shelf: string;
  readonly heightsMm: readonly number[];
}

/**
 * Puts an empty level in: on the floor or on another level, its posts above those beneath. Where a level stood there, it
 * comes to stand on the new one.
 */
export function addLevel(request: LoadRequest, plan: LoadPlan, { above, shelf, heightsMm }: NewLevel): Edited {
  const scene = sceneOf(request, plan);
  const levels = openPlan(plan);
  const beneath = above === null ? null : levelAt(levels, above);
  const risesMm = sum(heightsMm) + kindOf(request, shelf).thicknessMm;
  const standing = levelsOn(scene, above);
  const pattern = beneath?.posts ?? levels.find((_, index) => standing.includes(index))?.posts;
  const lies = {
    shelf,
    topMm: (beneath?.topMm ?? 0) + risesMm,
    xMm: beneath?.xMm ?? 0,
    yMm: beneath?.yMm ?? 0,
    turnDeg: beneath?.turnDeg ?? 0,
  };
  const posts = pattern?.length ? pattern : firstPosts(request, lies, heightsMm);
  lift(levels, standing, risesMm);
  levels.push({
    ...lies,
    posts: posts.map(({ xMm, yMm, turnDeg }) => ({ xMm, yMm, turnDeg, heightsMm: [...heightsMm] })),
    pieces: [],
  });
  return closePlan(request, plan, levels);
}

/** Takes a level out with its posts; its pieces wait again, and what stood on it comes down. */
export function removeLevel(request: LoadRequest, plan: LoadPlan, level: number): Edited {
  const scene = sceneOf(request, plan);
  const levels = openPlan(plan);
  const removed = levelAt(levels, level);
  lift(levels, levelsOn(scene, level), baseOf(scene.posts, level) - removed.topMm);
  levels.splice(level, 1);
  return closePlan(request, plan, levels);
}

/** Moves one post under a level. */
export function movePost(
  request: LoadRequest,
  plan: LoadPlan,
  level: number,
  post: number,
  xMm: number,
  yMm: number,
): Edited {
  const levels = openPlan(plan);
  postAt(levels, level, post);
  setPost(levelAt(levels, level), post, xMm, yMm);
  return closePlan(request, plan, levels);
}

/** Moves a post and every post that stands above or beneath it, so that the column stays one. */
export function moveColumn(
  request: LoadRequest,
  plan: LoadPlan,
  level: number,
  post: number,
  xMm: number,
  yMm: number,
): Edited {
  const levels = openPlan(plan);
  const from = postAt(levels, level, post);
  for (const each of levels) {
    each.posts.forEach((other, i) => {
      const off = Math.hypot(other.xMm - from.xMm, other.yMm - from.yMm);
      if (off <= request.rules.postAlignMm + 1e-9) setPost(each, i, xMm, yMm);
    });
  }
  return closePlan(request, plan, levels);
}

function setPost(level: OpenLevel, post: number, xMm: number, yMm: number): void {
  level.posts[post] = { ...(level.posts[post] as PlacedPost), xMm, yMm };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

function lift(levels: readonly OpenLevel[], which: readonly number[], byMm: number): void {
  for (const index of which) (levels[index] as OpenLevel).topMm += byMm;
}

/** Every level that stands on one, or on one that stands on it; on the floor for null. */
function levelsOn({ posts, shelves }: Scene, level: number | null): number[] {
  const on = new Set<number>();
  const standsOn = (index: number): boolean =>
    posts.some((post) => post.level === index && (post.standsOn === level || on.has(post.standsOn ?? -1)));
  for (let grown = true; grown; ) {
    grown = false;
    for (const { level: index } of shelves) {
      if (index === level || on.has(index) || !standsOn(index)) continue;
      on.add(index);
      grown = true;
    }
  }
  return [...on];
}

function kindOf(request: LoadRequest, name: string): LoadRequest["furniture"]["shelves"][number] {
  const found = request.furniture.shelves.find((each) => each.name === name);
  if (found) return found;
  throw new BadInput({ code: "unknown-name", path: "shelf", found: shown(name), expected: "a shelf of the request" });
}

function postAt(levels: readonly OpenLevel[], level: number, post: number): PlacedPost {
  const found = levelAt(levels, level).posts[post];
  if (found) return found;
  throw new BadInput({
    code: "unknown-place",
    path: `levels[${level}].posts[${post}]`,
    found: "no such post",
    expected: "a post of the plan",
  });
}
