import { availableParallelism } from "node:os";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { type PlanAround, planAround } from "../loading/planner/plan-around.ts";
import type { PlanOutcome, PlanProgress } from "../loading/planner/plan-load.ts";
import { atMostEvery } from "./at-most-every.ts";
import { betterOutcome } from "./better-outcome.ts";
import type { FromPlanWorker, PlanWorkerTask } from "./plan-worker-messages.ts";
import { NEW_THREADS, type Threads } from "./ready-threads.ts";
import { TakenThreads } from "./taken-threads.ts";

/** How long and how widely to look. */
export interface WorkersOptions {
  readonly seed: number;
  /** The answer comes by then, and earlier where the work limit is met first. */
  readonly seconds: number;
  /** Threads; each searches from its own seed. As many as the machine has cores, at most four, where left out. */
  readonly workers?: number;
  /** The most each thread looks; with it met before the time is up, the same seed and workers give the same plan. */
  readonly workLimit?: number;
  /** Told of every better load, whichever thread found it. */
  readonly onProgress?: (progress: PlanProgress) => void;
  /**
   * Shown better and better plans while it looks, the first as soon as there is one, then at most eight a second. Each keeps
   * every rule; the outcome is worth no less than the last, and is settled more evenly.
   */
  readonly onPlan?: (plan: LoadPlan, progress: PlanProgress) => void;
  /** A plan whose furniture stays, and which of its pieces stay too: see `planLoad`. */
  readonly around?: PlanAround;
  /** Ends the search early with the best so far. */
  readonly signal?: AbortSignal;
  /** Where its threads come from; each is started for it and ended after it where left out. */
  readonly threads?: Threads;
}

const MOST_WORKERS = 4;
const PLANS_EVERY_MS = 125;
/**
 * What a thread of a usual machine looks at in a second, less a margin: so that by default the work limit, which
 * repeats, is met before the time, which does not. Measured on one core of a two-core machine: 2.8 million.
 */
export const WORK_PER_SECOND = 2_400_000;

/** So many threads search where nothing is said: as many as the machine has cores, at most four. */
export const usualWorkers = (): number => Math.max(1, Math.min(MOST_WORKERS, availableParallelism()));

/**
 * Plans a load on several threads, each from its own seed, and gives the best of their plans. Its figures gain what no load
 * of the request can be worth more than (`valueBound`), and how far below it this one is (`gapToBound`); not so around a
 * given plan, whose furniture that bound does not know.
 *
 * @throws BadInput where the plan to plan around does not go with the request
 * @throws whatever a thread failed with, once all have been ended
 */
export async function planOnWorkers(request: LoadRequest, options: WorkersOptions): Promise<PlanOutcome> {
  // Asked here first, so that a fault of hers comes back as one and not as a thread's.
  planAround(request, options.around);
  const count = options.workers ?? usualWorkers();
  const stopFlag = new SharedArrayBuffer(4);
  const stop = (): void => {
    Atomics.store(new Int32Array(stopFlag), 0, 1);
  };
  if (options.signal?.aborted) stop();
  options.signal?.addEventListener("abort", stop);
  // The bound waits for the first load: until then every core is for what she waits to see.
  let tellFound = (): void => {};
  const found = new Promise<void>((resolve) => {
    tellFound = resolve;
  });
  let mostValue = Number.NEGATIVE_INFINITY;
  const onProgress = (progress: PlanProgress): void => {
    tellFound();
    if (progress.worth <= mostValue) return;
    mostValue = progress.worth;
    options.onProgress?.(progress);
  };
  const { onPlan } = options;
  let mostShown = Number.NEGATIVE_INFINITY;
  const shown = atMostEvery(PLANS_EVERY_MS, (better: BetterPlan) => onPlan?.(better.plan, better.progress));
  const onBetter = (better: BetterPlan): void => {
    if (better.progress.worth <= mostShown) return;
    mostShown = better.progress.worth;
    shown.tell(better);
  };
  const threads = new TakenThreads(options.threads ?? NEW_THREADS);
  try {
    const [valueBound, ...outcomes] = await Promise.all([
      options.around
        ? null
        : found.then(() => threads.ask<number, number>("bound-worker", request, (bound, tell) => tell(bound))),
      ...Array.from({ length: count }, async (_, i) => {
        const task: PlanWorkerTask = {
          request,
          around: options.around ?? null,
          // Far apart, so that neighbouring seeds share no thread's search.
          seed: (options.seed + i * 0x3c6ef372) | 0,
          workLimit: options.workLimit ?? options.seconds * WORK_PER_SECOND,
          milliseconds: options.seconds * 1000,
          plansEveryMs: onPlan ? PLANS_EVERY_MS : null,
          stopFlag,
        };
        const outcome = await threads.ask<FromPlanWorker, PlanOutcome>("plan-worker", task, (message, tell) => {
          if (message.kind === "progress") onProgress(message.progress);
          else if (message.kind === "better") onBetter(message);
          else tell(message.outcome);
        });
        tellFound();
        return outcome;
      }),
    ]);
    return withBound(
      outcomes.reduce((best, each) => betterOutcome(request, best, each)),
      valueBound,
    );
  } finally {
    shown.end();
    options.signal?.removeEventListener("abort", stop);
    await threads.letGo();
  }
}

type BetterPlan = Extract<FromPlanWorker, { kind: "better" }>;

function withBound(outcome: PlanOutcome, valueBound: number | null): PlanOutcome {
  if (outcome.kind === "impossible" || valueBound === null) return outcome;
  const value = Number(outcome.plan.figures.value);
  const gapToBound = valueBound > 0 ? Math.max(0, (valueBound - value) / valueBound) : 0;
  return { ...outcome, plan: { ...outcome.plan, figures: { ...outcome.plan.figures, valueBound, gapToBound } } };
}
