import { expect, test } from "vitest";
import { movePost } from "../../../loading/editing/edit-levels.ts";
import { planLoad } from "../../../loading/planner/plan-load.ts";
import { ALL_RULES } from "../../../loading/rules/all-rules.ts";
import { EIGHT_SIDED } from "../../../loading/testing/random-loads.ts";
import { holdingWords, postsWords, shelvesLeft, shortRule, stackWords } from "./furniture-words.ts";
import { newBreaks } from "./new-breaks.ts";

const outcome = planLoad(EIGHT_SIDED, { seed: 2, workLimit: 20_000 });
if (outcome.kind === "impossible") throw new Error("the test's own load cannot be made");
const { plan } = outcome;

test("every rule of the checker has its short words", () => {
  for (const { name } of ALL_RULES) expect(shortRule(name)).not.toBe(name);
});

test("posts are told by what is stacked", () => {
  expect(stackWords([100, 25], "metric")).toBe("100 + 25 mm");
  const posts = [1, 2, 3].map(() => ({ xMm: 0, yMm: 0, turnDeg: 0, heightsMm: [75] }));
  const level = { shelf: "full", topMm: 91, xMm: 0, yMm: 0, turnDeg: 0, posts, placements: [] };
  expect(postsWords(level, "metric")).toBe("three posts of 75 mm");
  expect(postsWords({ ...level, posts: [] }, "metric")).toBe("no posts");
});

test("shelves that lie in the plan are not left", () => {
  const before = EIGHT_SIDED.furniture.shelves.reduce((sum, { count }) => sum + count, 0);
  const left = shelvesLeft(EIGHT_SIDED, plan).reduce((sum, { count }) => sum + count, 0);
  expect(left).toBe(before - plan.levels.length);
});

test("only what a change breaks is told, not what was broken before", () => {
  const askBroken = newBreaks(EIGHT_SIDED, plan);
  expect(askBroken(plan)).toEqual([]);
  const crooked = movePost(EIGHT_SIDED, plan, plan.levels.length - 1, 0, 0, 0).plan;
  expect(askBroken(crooked).map(({ rule }) => rule)).toContain("postAlignMm");
  expect(newBreaks(EIGHT_SIDED, crooked)(crooked)).toEqual([]);
});

test("while a post is held the plainest thing is told first, and how much more is wrong", () => {
  const broken = ["postHeights", "postHead", "gapMm"].map((rule) => ({ rule }));
  expect(holdingWords(broken)).toBe("✕ not wholly under the shelf, and 2 more");
  expect(holdingWords([{ rule: "postHeights" }])).toBe("✕ the posts do not reach");
  expect(holdingWords([])).toBe("✓ keeps the rules");
  expect(holdingWords(null)).toBe("");
});
