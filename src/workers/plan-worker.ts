import { parentPort, workerData } from "node:worker_threads";
import { planLoad } from "../loading/planner/plan-load.ts";
import type { FromPlanWorker, PlanWorkerTask } from "./plan-worker-messages.ts";

// One thread of `planOnWorkers`: searches from one seed, tells what it finds, stops when asked or when its time is up.

const port = parentPort;
if (!port) throw new Error("plan-worker runs as a worker thread; call planOnWorkers instead.");

const { request, seed, workLimit, milliseconds, stopFlag } = workerData as PlanWorkerTask;
const stopAsked = new Int32Array(stopFlag);
const started = performance.now();
const tell = (message: FromPlanWorker): void => port.postMessage(message);

const outcome = planLoad(request, {
  seed,
  workLimit,
  onProgress: (progress) => tell({ kind: "progress", progress }),
  shouldStop: () => Atomics.load(stopAsked, 0) === 1 || performance.now() - started > milliseconds,
});
tell({ kind: "outcome", outcome });
