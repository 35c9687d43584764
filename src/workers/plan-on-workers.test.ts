import { describe, expect, it } from "vitest";
import { checkPlan } from "../loading/checker/check-plan.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { BadInput } from "../measures/bad-input.ts";
import { planOnWorkers } from "./plan-on-workers.ts";

const request = readLoadRequest({
  format: "load-request/1",
  kiln: { name: "back room", chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 } },
  furniture: {
    shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 3 }],
    posts: [
      { heightMm: 25, widthMm: 35, shape: "square", count: 3 },
      { heightMm: 100, widthMm: 35, shape: "square", count: 6 },
    ],
  },
  ware: [
    { name: "cup", count: 9, diameterMm: 70, heightMm: 65, handle: { reachMm: 26, widthMm: 16, angleDeg: 0 } },
    { name: "bowl", count: 6, diameterMm: 140, heightMm: 80, value: 3 },
  ],
});

describe("planning on worker threads", () => {
  it("gives the same plan for the same seed, threads and work", async () => {
    const options = { seed: 4, seconds: 60, workers: 2, workLimit: 30_000 };
    const [first, again] = await Promise.all([planOnWorkers(request, options), planOnWorkers(request, options)]);
    expect(first.kind).toBe("planned");
    expect(again).toEqual(first);
    const { value, valueBound, gapToBound } = (first as Extract<typeof first, { kind: "planned" }>).plan.figures;
    expect(value).toBeLessThanOrEqual(valueBound as number);
    expect(gapToBound).toBeCloseTo(1 - (value as number) / (valueBound as number), 12);
  });

  it("tells of better loads as it finds them", async () => {
    const told: number[] = [];
    await planOnWorkers(request, {
      seed: 1,
      seconds: 60,
      workers: 2,
      workLimit: 30_000,
      onProgress: (progress) => told.push(progress.worth),
    });
    expect(told.length).toBeGreaterThan(0);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  it("shows better and better plans that keep every rule, the last no better than the outcome", async () => {
    const seen: LoadPlan[] = [];
    const outcome = await planOnWorkers(request, {
      seed: 1,
      seconds: 60,
      workers: 2,
      workLimit: 60_000,
      onPlan: (plan) => seen.push(plan),
    });
    if (outcome.kind !== "planned") throw new Error("This load can be made.");
    expect(seen.length).toBeGreaterThan(0);
    for (const plan of seen) expect(checkPlan(request, plan)).toEqual([]);
    const values = [...seen, outcome.plan].map((plan) => plan.figures.value as number);
    expect(values).toEqual(values.toSorted((a, b) => a - b));
  });

  it("plans around what stands there, and says where the pins are then", async () => {
    const first = await planOnWorkers(request, { seed: 4, seconds: 60, workers: 1, workLimit: 20_000 });
    if (first.kind !== "planned") throw new Error("This load can be made.");
    const pins = [{ level: 0, placement: 2 }];
    const around = { plan: first.plan, keep: "pinned", pins } as const;
    const again = await planOnWorkers(request, { seed: 5, seconds: 60, workers: 2, workLimit: 20_000, around });
    if (again.kind !== "planned") throw new Error("There is always a plan around a plan.");
    expect(again.pins).toEqual([{ level: 0, placement: 0 }]);
    expect(again.plan.levels[0]?.placements[0]).toEqual(first.plan.levels[0]?.placements[2]);
    expect(checkPlan(request, again.plan)).toEqual([]);
    expect(again.plan.figures.value).toBeGreaterThanOrEqual(first.plan.figures.value as number);
    expect(again.plan.figures.valueBound).toBeUndefined();
  });

  it("refuses a plan that does not go with the request as her fault, not a thread's", async () => {
    const around = {
      plan: { format: "load-plan/1", levels: [], left: [], figures: {} },
      keep: "pinned",
      pins: [{ level: 0, placement: 0 }],
    } as const;
    const asked = planOnWorkers(request, { seed: 1, seconds: 1, around });
    await expect(asked).rejects.toBeInstanceOf(BadInput);
  });

  it("stops with the best so far when asked", async () => {
    const abort = new AbortController();
    const outcome = await planOnWorkers(request, {
      seed: 1,
      seconds: 3600,
      workLimit: Number.POSITIVE_INFINITY,
      workers: 1,
      signal: abort.signal,
      onProgress: () => abort.abort(),
    });
    expect(outcome.kind).toBe("planned");
  });
});
