import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { benchmarkRequest } from "../../../benchmarks/instances.ts";
import { loadByHand } from "../../../benchmarks/yardsticks/by-hand.ts";
import { loadFairly } from "../../../benchmarks/yardsticks/fair.ts";
import { checkPlan } from "../checker/check-plan.ts";
import type { LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { planLoad } from "../planner/plan-load.ts";
import { readLoadRequest } from "../read-load-request.ts";
import { randomRequest } from "../testing/random-requests.ts";
import { loadValueBound } from "./load-value-bound.ts";

const worthOf = (request: LoadRequest, plan: LoadPlan): number => {
  const values = new Map(request.ware.map((ware) => [ware.name, ware.value]));
  return plan.levels.flatMap((level) => level.placements).reduce((sum, each) => sum + values.get(each.ware)!, 0);
};

/** One round shelf of 400 mm in a round kiln, one level, no gaps and no clearances; the kinds of discs that wait. */
function discsOnOneShelf(kinds: readonly { diameterMm: number; count: number; value: number }[]): LoadRequest {
  return readLoadRequest({
    format: "load-request/1",
    kiln: { name: "one shelf", chamber: { shape: "round", diameterMm: 400, depthMm: 200 } },
    furniture: {
      shelves: [{ name: "full", shape: "disc", diameterMm: 400, thicknessMm: 10, count: 1 }],
      posts: [{ heightMm: 50, widthMm: 30, shape: "square", count: 3 }],
    },
    ware: kinds.map((kind, i) => ({ ...kind, name: `disc ${i + 1}`, heightMm: 50 })),
    rules: { floorAirMm: 0, gapMm: 0, headroomMm: 0, lidMm: 0, shelfWallMm: 0 },
  });
}
const equalDiscs = (ratio: number, count: number): LoadRequest =>
  discsOnOneShelf([{ diameterMm: 400 / ratio, count, value: 1 }]);

const file = JSON.parse(readFileSync(new URL("../../../golden/packing-records/records.json", import.meta.url), "utf8"));
const records = file.equalCirclesInCircle.values as Record<string, { ratio: number }>;
const unequal = file.unequal_NR.values as Record<string, { radii: number[]; R: number }>;

describe("the bound on a load's value", () => {
  // golden/packing-records: the least round shelf for n equal discs, proven where it says so.
  it("is the true most for equal discs on a shelf just wide enough, as far as that is proven", () => {
    for (let n = 1; n <= 14; n++) {
      // Where n + 1 need no wider shelf (7 and 6) the record of the larger number holds.
      if (records[n + 1]!.ratio <= records[n]!.ratio + 1e-9) continue;
      const { value } = loadValueBound(equalDiscs(records[n]!.ratio * (1 + 1e-7), 40));
      expect(value, `${n} discs`).toBeGreaterThanOrEqual(n);
      if (n <= 13) expect(value, `${n} discs`).toBe(n);
    }
  });

  it("is never below the best packing known of equal discs", () => {
    for (const [n, { ratio }] of Object.entries(records)) {
      if (Number(n) < 2 || Number(n) > 200) continue;
      const { value } = loadValueBound(equalDiscs(ratio * (1 + 1e-9), 300));
      expect(value, `${n} discs`).toBeGreaterThanOrEqual(Number(n));
      // The area alone allows ratio² of them.
      if (Number(n) > 3) expect(value, `${n} discs`).toBeLessThan(ratio * ratio * 0.95);
    }
  });

  it("lets all discs of the best packings known of unequal discs in, and not all on a shelf a tenth narrower", () => {
    for (const [name, { radii, R }] of Object.entries(unequal)) {
      const valueOnShelf = (shelf: number): number =>
        loadValueBound(
          discsOnOneShelf(
            radii.map((radius) => ({ diameterMm: (400 * radius) / shelf, count: 1, value: radius ** 2 })),
          ),
        ).value;
      const all = radii.reduce((sum, radius) => sum + radius ** 2, 0);
      // The radii of the shelves are published to four places.
      expect(valueOnShelf(R + 1e-3), name).toBeGreaterThanOrEqual(all * (1 - 1e-9));
      expect(valueOnShelf(R * 0.9), name).toBeLessThan(all);
    }
  });

  it("is never below the value of a load by hand, by the fair yardstick or by the planner", () => {
    let loads = 0;
    for (let seed = 0; seed < 40; seed++) {
      const request = randomRequest(seed);
      const bound = loadValueBound(request).value;
      const planned = planLoad(request, { seed: 1, workLimit: 10_000 });
      const fair = seed % 4 === 0 ? loadFairly(request) : null;
      const plans = [loadByHand(request), fair, planned.kind === "planned" ? planned.plan : null];
      for (const plan of plans) {
        if (!plan) continue;
        loads++;
        expect(worthOf(request, plan), `seed ${seed}`).toBeLessThanOrEqual(bound + 1e-6);
      }
    }
    expect(loads).toBeGreaterThan(50);
  });

  it("stays well under all that waits where not all of it can go in", () => {
    for (const seed of [1, 2, 3]) {
      const request = benchmarkRequest(seed, 200);
      const waiting = request.ware.reduce((sum, ware) => sum + ware.value * ware.count, 0);
      expect(loadValueBound(request).value).toBeLessThan(waiting / 3);
    }
  });

  it("counts whole levels: what needs a taller level than there can be is not in it", () => {
    const request = equalDiscs(2.5, 3);
    const tall = { ...request, ware: [{ ...request.ware[0]!, heightMm: 145 }] };
    // Nothing above the least post of 50 mm and the shelf of 10 mm is taller than 140 mm, half a millimetre for rounding.
    expect(loadValueBound(tall).value).toBe(0);
    expect(loadValueBound(request).value).toBe(3);
  });
});

describe("the yardsticks", () => {
  it("keep every rule, whatever the request", () => {
    for (let seed = 200; seed < 210; seed++) {
      const request = randomRequest(seed);
      for (const plan of [loadByHand(request), loadFairly(request)]) {
        if (plan) expect(checkPlan(request, plan), `seed ${seed}`).toEqual([]);
      }
    }
  });

  it("load a potter's kiln well by the programme, and less well by eye", () => {
    const request = benchmarkRequest(1, 40);
    const byHand = loadByHand(request)!;
    const fair = loadFairly(request)!;
    expect(checkPlan(request, fair)).toEqual([]);
    expect(checkPlan(request, byHand)).toEqual([]);
    expect(worthOf(request, fair)).toBeGreaterThan(worthOf(request, byHand));
    expect(worthOf(request, byHand)).toBeGreaterThan(300);
  });
});
