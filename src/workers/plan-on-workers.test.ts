import { describe, expect, it } from "vitest";
import { readLoadRequest } from "../loading/read-load-request.ts";
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
