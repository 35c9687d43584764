import fc from "fast-check";
import { expect, test } from "vitest";
import { sceneOf } from "../../../loading/checker/scene.ts";
import { holdPiece } from "../../../loading/editing/live-answer.ts";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import { anyPlan, EIGHT_SIDED } from "../../../loading/testing/random-loads.ts";
import { dimensionLines, MOST_LINES } from "./dimension-lines.ts";

const [beaker] = EIGHT_SIDED.ware;
if (!beaker) throw new Error("the test's own load has no beaker");

test("at most three lines, each its own way out, what falls short first", () => {
  fc.assert(
    fc.property(anyPlan, fc.integer({ min: -150, max: 150 }), fc.integer({ min: -150, max: 150 }), (plan, x, y) => {
      const scene = sceneOf(EIGHT_SIDED, plan);
      const answer = holdPiece(EIGHT_SIDED, plan, { ware: "beaker" })?.answer({ xMm: x, yMm: y, turnDeg: 0 }, 0);
      if (!answer) throw new Error("no answer");
      const solid = wareSolid(beaker, x, y, 0, plan.levels[0]?.topMm ?? 0);
      const lines = dimensionLines(scene, solid, 0, answer, "metric");
      expect(lines.length).toBeLessThanOrEqual(MOST_LINES);
      lines.forEach(({ dx, dy }, i) => {
        expect(Math.hypot(dx, dy)).toBeCloseTo(1, 6);
        for (const other of lines.slice(i + 1)) expect(dx * other.dx + dy * other.dy).toBeLessThan(0.89);
      });
      if (lines[0] && / into it$| over$/.test(lines[0].words)) expect(lines).toHaveLength(1);
      const order = lines.map(({ isShort }) => isShort);
      expect(order).toEqual([...order].sort((a, b) => Number(b) - Number(a)));
      for (const { isShort, words } of lines) expect(words.startsWith("✕")).toBe(isShort);
    }),
    { numRuns: 60 },
  );
});

test("past the shelf's edge it says how far over", () => {
  const level = { shelf: "full", topMm: 41, xMm: 0, yMm: 0, turnDeg: 0, posts: [], placements: [] };
  const plan = { format: "load-plan/1", levels: [level], left: [], figures: {} } as const;
  const spot = { xMm: 170, yMm: 0, turnDeg: 0 };
  const answer = holdPiece(EIGHT_SIDED, plan, { ware: "beaker" })?.answer(spot, 0);
  if (!answer) throw new Error("no answer");
  const lines = dimensionLines(sceneOf(EIGHT_SIDED, plan), wareSolid(beaker, 170, 0, 0, 41), 0, answer, "metric");
  // 170 + 39 of the beaker's half, on a shelf of 195.
  expect(lines[0]).toMatchObject({ words: "✕ 14 mm over", isShort: true });
  expect(lines[0]?.dx).toBeCloseTo(1, 6);
});

test("carried out of the kiln it has no distances", () => {
  const level = { shelf: "full", topMm: 41, xMm: 0, yMm: 0, turnDeg: 0, posts: [], placements: [] };
  const plan = { format: "load-plan/1", levels: [level], left: [], figures: {} } as const;
  const answer = holdPiece(EIGHT_SIDED, plan, { ware: "beaker" })?.answer({ xMm: 300, yMm: 0, turnDeg: 0 }, 0);
  if (!answer) throw new Error("no answer");
  expect(dimensionLines(sceneOf(EIGHT_SIDED, plan), wareSolid(beaker, 300, 0, 0, 41), 0, answer, "metric")).toEqual([]);
});
