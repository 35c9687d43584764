import { describe, expect, it } from "vitest";
import { chamberRegion } from "../../kiln/convex-region.ts";
import { checkPlan } from "../checker/check-plan.ts";
import { Crowding } from "../packing/crowding.ts";
import { randomRequest } from "../testing/random-requests.ts";
import { postClearsProbe, shelfClearsProbe } from "./columns.ts";
import { planLoad } from "./plan-load.ts";
import { planClearance } from "./standing-room.ts";

// Distances worked by hand from the rules' own words: measured in space, nothing inside anything else.

describe("a clearance of nothing still means not into it", () => {
  it("lets a piece touch what it stands beside, and asks nothing of one that passes above or beneath", () => {
    expect(planClearance(50, 100, 90, 90, 0)).toBe(0);
    expect(planClearance(50, 30, 90, 90, 0)).toBeLessThan(0);
    expect(planClearance(95, 30, 90, 90, 0)).toBeLessThan(0);
  });

  it("keeps the right distance aslant: 30 up and 40 out are 50", () => {
    expect(planClearance(120, 40, 90, 90, 50)).toBeCloseTo(40, 12);
    expect(planClearance(20, 40, 90, 90, 50)).toBeCloseTo(40, 12);
    expect(planClearance(140, 40, 90, 90, 50)).toBeLessThan(0);
  });

  it("crowds a piece that is set down on a line it must only not run into, gap or none", () => {
    for (const gapMm of [0, 6]) {
      const cup = { radius: 40, arms: [], heightMm: 60, massKg: 0.3, areaMm2: 5027, swingMm: 0 };
      const bounds = [{ region: chamberRegion({ shape: "round", diameterMm: 400, depthMm: 400 }), marginMm: 0 }];
      const deepest = (clearMm: number): number => {
        const standoffs = [
          { obstacle: { kind: "line", x1: 0, y1: 0, x2: 200, y2: 0 } as const, clearanceFor: () => clearMm },
        ];
        const crowding = new Crowding({ bounds, standoffs, gapMm }, [cup], 1);
        crowding.measure(Int32Array.of(0), 1, Float64Array.of(100, 10, 0), new Float64Array(3));
        return crowding.deepest;
      };
      expect(deepest(0)).toBeCloseTo(30, 1);
      expect(deepest(Number.NEGATIVE_INFINITY)).toBe(0);
    }
  });

  it("lets no shelf and no post lie across a probe", () => {
    const probe = { wallX: 200, wallY: 0, tipX: 150, tipY: 0, heightMm: 90 };
    const shelf = { circle: { x: 0, y: 0, radius: 190 }, sides: [] };
    expect(shelfClearsProbe(shelf, 80, 96, probe, 0)).toBe(false);
    expect(shelfClearsProbe(shelf, 100, 116, probe, 0)).toBe(true);
    const columns = { x: [160, -80, -80], y: [0, 100, -100], turnDeg: [0, 120, 240] };
    expect(postClearsProbe(columns, 0, 35, 50, 150, probe, 0)).toBe(false);
    expect(postClearsProbe(columns, 0, 35, 100, 150, probe, 0)).toBe(true);
    expect(postClearsProbe(columns, 1, 35, 50, 150, probe, 0)).toBe(true);
  });

  it.each([21352, 25606])("keeps every rule of random request %i, whose own rules ask no clearance", (seed) => {
    const asked = randomRequest(seed);
    const outcome = planLoad(asked, { seed, workLimit: 15_000 });
    if (outcome.kind !== "planned") throw new Error("This request can be loaded.");
    expect(checkPlan(asked, outcome.plan)).toEqual([]);
  });
});
