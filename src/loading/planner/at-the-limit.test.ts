import { describe, expect, it } from "vitest";
import { loadValueBound } from "../bound/load-value-bound.ts";
import { checkPlan } from "../checker/check-plan.ts";
import { readLoadRequest } from "../read-load-request.ts";
import { planLoad } from "./plan-load.ts";

function request(ware: object[], changes: { acrossFlatsMm?: number; rules?: object } = {}) {
  return readLoadRequest({
    format: "load-request/1",
    kiln: {
      name: "back room",
      chamber: { shape: "polygon", sides: 8, acrossFlatsMm: changes.acrossFlatsMm ?? 430, depthMm: 460 },
    },
    furniture: {
      shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 4 }],
      posts: [25, 75, 100].map((heightMm) => ({ heightMm, widthMm: 35, shape: "square", count: 6 })),
    },
    ware,
    ...(changes.rules ? { rules: changes.rules } : {}),
  });
}

describe("at the very limit of the rules", () => {
  it.each([390, 386, 378, 370])(
    "a plate %i mm wide stands alone on a 390 mm shelf, whatever the seed",
    (diameterMm) => {
      const asked = request([{ name: "plate", count: 2, diameterMm, heightMm: 30 }]);
      for (const seed of [1, 2, 3, 4]) {
        const outcome = planLoad(asked, { seed, workLimit: 20_000 });
        if (outcome.kind !== "planned") throw new Error(outcome.reasons[0]?.message);
        expect(checkPlan(asked, outcome.plan)).toEqual([]);
        expect(outcome.plan.figures.pieces).toBe(1);
        expect(loadValueBound(asked).value).toBeGreaterThanOrEqual(1);
      }
    },
  );

  it("a shelf that keeps exactly its distance from the wall goes in", () => {
    const asked = request([{ name: "cup", count: 3, diameterMm: 80, heightMm: 60 }], { acrossFlatsMm: 402 });
    const outcome = planLoad(asked, { seed: 1, workLimit: 20_000 });
    if (outcome.kind !== "planned") throw new Error(outcome.reasons[0]?.message);
    expect(checkPlan(asked, outcome.plan)).toEqual([]);
    expect(outcome.plan.figures.pieces).toBe(3);
  });

  it.each([30, 60, 150])("a gap of %i mm, wider than a shelf is thick, is kept through the shelf too", (gapMm) => {
    const ware = [
      { name: "cup", count: 12, diameterMm: 80, heightMm: 60 },
      { name: "bowl", count: 8, diameterMm: 120, heightMm: 40 },
    ];
    for (const headroomMm of [6, 0]) {
      const asked = request(ware, { rules: { gapMm, headroomMm } });
      const outcome = planLoad(asked, { seed: 2, workLimit: 60_000 });
      if (outcome.kind === "planned") expect(checkPlan(asked, outcome.plan)).toEqual([]);
    }
  });
});
