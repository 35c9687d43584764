import { describe, expect, test } from "vitest";
import { checkPlan } from "../checker/check-plan.ts";
import type { LoadPlan } from "../load-plan.ts";
import { EIGHT_SIDED } from "../testing/random-loads.ts";
import { addLevel } from "./edit-levels.ts";

const empty: LoadPlan = { format: "load-plan/1", levels: [], left: [], figures: {} };
const farOut = ({ xMm, yMm }: { readonly xMm: number; readonly yMm: number }): number => Math.hypot(xMm, yMm);

describe("the first posts under a shelf", () => {
  test("stand as far out as they go", () => {
    const { plan } = addLevel(EIGHT_SIDED, empty, { above: null, shelf: "full", heightsMm: [25] });
    // Under a disc of 195 mm the corners of a 35 mm square reach its edge when its axis stands about 176 mm out.
    const corner = (out: number): number => Math.hypot(out + 17.5, 17.5);
    for (const post of plan.levels[0]?.posts ?? []) {
      expect(corner(farOut(post))).toBeLessThanOrEqual(195);
      expect(corner(farOut(post) + 1.1)).toBeGreaterThan(195);
    }
  });

  test("are turned to pass a probe that a post in the usual place would come too near", () => {
    const probes = [{ name: "low", angleDeg: 0, heightMm: 12, reachMm: 30 }];
    const request = { ...EIGHT_SIDED, kiln: { ...EIGHT_SIDED.kiln, probes } };
    const { plan } = addLevel(request, empty, { above: null, shelf: "octagon", heightsMm: [100] });
    expect(checkPlan(request, plan).filter(({ rule }) => rule === "probeMm")).toEqual([]);
    expect(plan.levels[0]?.posts.map(({ turnDeg }) => turnDeg % 120)).not.toContain(0);
  });
});
