import type { Broken } from "../../../loading/checker/broken.ts";
import { type PostStack, postsLeft, stacksOf } from "../../../loading/editing/level-heights.ts";
import type { Level, LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { formatLength, formatLengthNumber, type LengthUnits } from "../../../measures/length.ts";

/** A stack of posts in a few words: "100 mm", "100 + 25 mm". */
export function stackWords(heightsMm: readonly number[], units: LengthUnits): string {
  const last = formatLength(heightsMm.at(-1) ?? 0, units);
  return [...heightsMm.slice(0, -1).map((height) => formatLengthNumber(height, units)), last].join(" + ");
}

/** How a stack is known among others: "100+25". */
export const stackKey = (heightsMm: readonly number[]): string => heightsMm.join("+");

/** The posts under a level in a few words: "three posts of 100 mm", or "posts of 100 mm and 75 + 25 mm". */
export function postsWords({ posts }: Level, units: LengthUnits): string {
  if (posts.length === 0) return "no posts";
  const kinds = [...new Map(posts.map(({ heightsMm }) => [stackKey(heightsMm), heightsMm])).values()];
  const stacks = kinds.map((heightsMm) => stackWords(heightsMm, units)).join(" and ");
  return kinds.length === 1 && posts.length === 3 ? `three posts of ${stacks}` : `posts of ${stacks}`;
}

/** The shelves that lie nowhere yet, by kind, and how many of each. Kinds of which none is left are not named. */
export function shelvesLeft(request: LoadRequest, plan: LoadPlan): { readonly name: string; readonly count: number }[] {
  return request.furniture.shelves
    .map(({ name, count }) => ({ name, count: count - plan.levels.filter(({ shelf }) => shelf === name).length }))
    .filter(({ count }) => count > 0);
}

/** The stacks three of which can be made of the posts that stand nowhere yet, lowest first. */
export const stacksLeft = (request: LoadRequest, plan: LoadPlan): PostStack[] =>
  stacksOf(postsLeft(request, plan, null));

// Every rule of the checker in the few words there is room for in a drawing.
const SHORT: Readonly<Record<string, string>> = {
  threePosts: "three posts are needed",
  postHeights: "the posts do not reach",
  postFooting: "over the edge it stands on",
  postHead: "not wholly under the shelf",
  postAlignMm: "not above the post beneath",
  floorAirMm: "too little air beneath",
  shelfWallMm: "too near the wall",
  chamberDepth: "over the rim",
  overlap: "runs into something",
  balance: "the shelf would tip",
  shelfEdge: "a piece over the edge",
  gapMm: "too near a piece",
  headroomMm: "too little headroom",
  lidMm: "too near the lid",
  probeMm: "too near the probe",
  spyholeMm: "too near a spyhole",
  stock: "more than there are",
};

/** A rule in the few words there is room for in a drawing. */
export const shortRule = (rule: string): string => SHORT[rule] ?? rule;

/** What she is told while she holds a post or a shelf: the plainest thing that is wrong, and how much more there is. */
export function holdingWords(broken: readonly Pick<Broken, "rule">[] | null): string {
  if (broken === null) return "";
  const rules = new Set(broken.map(({ rule }) => rule));
  const [first] = [...TELLING.filter((rule) => rules.has(rule)), ...rules];
  if (first === undefined) return "✓ keeps the rules";
  return `✕ ${shortRule(first)}${rules.size > 1 ? `, and ${rules.size - 1} more` : ""}`;
}

// A post past an edge stands on something else and so no longer reaches: the edge is what she has to hear of.
const TELLING = ["postHead", "postFooting", "overlap", "probeMm", "postAlignMm", "gapMm", "balance"];
