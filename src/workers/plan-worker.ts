import { parentPort } from "node:worker_threads";
import type { LoadPlan } from "../loading/load-plan.ts";
import { type PlanProgress, planLoad } from "../loading/planner/plan-load.ts";
import type { FromPlanWorker, PlanWorkerTask } from "./plan-worker-messages.ts";

// One thread of `planOnWorkers`: searches from one seed, tells what it finds, stops when asked or when its
// time is up; then waits for the next task.

const port = parentPort;
if (!port) throw new Error("plan-worker runs as a worker thread; call planOnWorkers instead.");
const tell = (message: FromPlanWorker): void => port.postMessage(message);

port.on("message", ({ request, around, seed, workLimit, milliseconds, plansEveryMs, stopFlag }: PlanWorkerTask) => {
  const stopAsked = new Int32Array(stopFlag);
  const started = performance.now();
  let untold: { readonly progress: PlanProgress; readonly plan: () => LoadPlan } | null = null;
  let toldAt = Number.NEGATIVE_INFINITY;

  /** The search leaves this thread no other moment: it is asked whenever the search asks whether to stop. */
  const tellPlanWhenDue = (): void => {
    if (!untold || plansEveryMs === null || performance.now() - toldAt < plansEveryMs) return;
    tell({ kind: "better", progress: untold.progress, plan: untold.plan() });
    untold = null;
    toldAt = performance.now();
  };

  const outcome = planLoad(request, {
    seed,
    workLimit,
    ...(around ? { around } : {}),
    onProgress: (progress, plan) => {
      tell({ kind: "progress", progress });
      untold = { progress, plan };
      tellPlanWhenDue();
    },
    shouldStop: () => {
      tellPlanWhenDue();
      return Atomics.load(stopAsked, 0) === 1 || performance.now() - started > milliseconds;
    },
  });
  tell({ kind: "outcome", outcome });
});
