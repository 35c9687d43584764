import { describe, expect, test } from "vitest";
import { checkPlan } from "../loading/checker/check-plan.ts";
import { planLoad } from "../loading/planner/plan-load.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { READY_MADE_KILNS, readyMadeKiln } from "./ready-made-kilns.ts";

// Invented ware, small enough for a test kiln.
const WARE = [
  { name: "cup", count: 8, diameterMm: 70, heightMm: 65, handle: { reachMm: 26, widthMm: 16, angleDeg: 0 } },
  { name: "dish", count: 6, diameterMm: 110, heightMm: 30 },
];

describe("every ready-made kiln", () => {
  test.each(READY_MADE_KILNS)(
    "$words ($id): a load of small pieces can be planned in it, and keeps every rule",
    (each) => {
      const { kiln, furniture } = each;
      const request = readLoadRequest({ format: "load-request/1", kiln, furniture, ware: WARE });
      const outcome = planLoad(request, { seed: 1, workLimit: 20_000 });
      if (outcome.kind !== "planned") throw new Error(outcome.reasons.map(({ message }) => message).join(" "));
      expect(outcome.plan.levels.length).toBeGreaterThan(0);
      expect(outcome.plan.figures.pieces).toBeGreaterThanOrEqual(4);
      expect(checkPlan(request, outcome.plan)).toEqual([]);
    },
  );

  test.each(READY_MADE_KILNS)("$words ($id): has full shelves, a post kit, one probe and two spyholes", (each) => {
    expect(each.furniture.shelves.some(({ name }) => name === "full shelf")).toBe(true);
    expect(each.furniture.posts.length).toBeGreaterThanOrEqual(3);
    for (const { count } of each.furniture.posts) expect(count).toBeGreaterThanOrEqual(3);
    expect([each.kiln.probes?.length, each.kiln.spyholes?.length]).toEqual([1, 2]);
  });

  test("is found by its id, and no two share one", () => {
    for (const each of READY_MADE_KILNS) expect(readyMadeKiln(each.id)).toBe(each);
    expect(readyMadeKiln("none such")).toBeNull();
  });
});
