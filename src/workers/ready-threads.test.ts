import type { Worker } from "node:worker_threads";
import { afterEach, expect, it } from "vitest";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { planOnWorkers } from "./plan-on-workers.ts";
import { ReadyThreads, type ThreadName } from "./ready-threads.ts";

const request = readLoadRequest({
  format: "load-request/1",
  kiln: { name: "back room", chamber: { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 } },
  furniture: {
    shelves: [{ name: "full", shape: "disc", diameterMm: 390, thicknessMm: 16, count: 2 }],
    posts: [{ heightMm: 100, widthMm: 35, shape: "square", count: 6 }],
  },
  ware: [
    { name: "cup", count: 9, diameterMm: 70, heightMm: 65 },
    { name: "bowl", count: 6, diameterMm: 140, heightMm: 80, value: 3 },
  ],
});
const OPTIONS = { seed: 4, seconds: 60, workers: 2, workLimit: 20_000 };

/** Ready threads that remember which were taken. */
class WatchedThreads extends ReadyThreads {
  readonly taken = new Set<Worker>();
  override take(name: ThreadName): Worker {
    const worker = super.take(name);
    this.taken.add(worker);
    return worker;
  }
}

let threads: WatchedThreads;
afterEach(() => threads.end());

it("plans on the same threads again and again, each time as new ones would", async () => {
  threads = new WatchedThreads({ "plan-worker": 2, "bound-worker": 1 });
  threads.makeReady();
  const fresh = await planOnWorkers(request, OPTIONS);
  const other = await planOnWorkers(request, { ...OPTIONS, seed: 9, threads });
  expect(other.kind).toBe("planned");
  for (let times = 0; times < 3; times++) {
    expect(await planOnWorkers(request, { ...OPTIONS, threads })).toEqual(fresh);
  }
  expect(threads.taken.size).toBe(3);
});

it("starts more where more are wanted, and keeps no more than it should", async () => {
  threads = new WatchedThreads({ "plan-worker": 1, "bound-worker": 0 });
  await Promise.all([1, 2].map((seed) => planOnWorkers(request, { ...OPTIONS, seed, threads })));
  const alive = [...threads.taken].filter(({ threadId }) => threadId !== -1);
  expect(threads.taken.size).toBe(6);
  expect(alive).toHaveLength(1);
});

it("goes on with another where one that rested is gone", async () => {
  threads = new WatchedThreads({ "plan-worker": 2, "bound-worker": 1 });
  const fresh = await planOnWorkers(request, { ...OPTIONS, threads });
  await Promise.all([...threads.taken].map((worker) => worker.terminate()));
  expect(await planOnWorkers(request, { ...OPTIONS, threads })).toEqual(fresh);
});

it("a stopped planning leaves its threads fit for the next", async () => {
  threads = new WatchedThreads({ "plan-worker": 2, "bound-worker": 1 });
  const fresh = await planOnWorkers(request, OPTIONS);
  const abort = new AbortController();
  const many = { ...request, ware: request.ware.map((ware) => ({ ...ware, count: ware.count * 10 })) };
  await planOnWorkers(many, {
    ...OPTIONS,
    workLimit: Number.POSITIVE_INFINITY,
    threads,
    signal: abort.signal,
    onProgress: () => abort.abort(),
  });
  expect(await planOnWorkers(request, { ...OPTIONS, threads })).toEqual(fresh);
});

it("ended, it leaves no thread behind", async () => {
  threads = new WatchedThreads({ "plan-worker": 2, "bound-worker": 1 });
  await planOnWorkers(request, { ...OPTIONS, threads });
  await threads.end();
  expect([...threads.taken].map(({ threadId }) => threadId)).toEqual([-1, -1, -1]);
  await planOnWorkers(request, { ...OPTIONS, threads });
  expect([...threads.taken].every(({ threadId }) => threadId === -1)).toBe(true);
});
