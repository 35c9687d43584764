import { checkPlan } from "../src/loading/checker/check-plan.ts";
import type { LoadPlan } from "../src/loading/load-plan.ts";
import { planLoad } from "../src/loading/planner/plan-load.ts";
import { planOnWorkers, WORK_PER_SECOND } from "../src/workers/plan-on-workers.ts";
import { benchmarkRequest } from "./instances.ts";
import { median, type Row } from "./row.ts";
import { valueOfPlan } from "./single-loads.ts";

/** How soon she sees a plan, and what packing the rest round half of one brings. Milliseconds. */
export interface LivePlan {
  readonly seed: number;
  readonly pieces: number;
  /** From asking to the first plan shown, by the clock, threads started and all. */
  readonly firstShownMs: number;
  readonly shown: number;
  /** Of the whole plan: what the packed one is measured against in the same run. */
  readonly value: number;
  readonly thinned: number;
  /** After so much CPU time packing the rest had its first answer, and its last better one. */
  readonly packFirstMs: number;
  readonly packLastBetterMs: number;
  /** What packing was worth at first and in the end. */
  readonly packFirstValue: number;
  readonly packed: number;
  readonly broken: number;
}

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Plans one benchmark shelf on threads, takes every other piece off, and packs the rest in this thread. */
export async function livePlan(seed: number, pieces: number, seconds: number): Promise<LivePlan | null> {
  const request = benchmarkRequest(seed, pieces);
  const from = performance.now();
  let firstShownMs = Number.NaN;
  let shown = 0;
  const onPlan = (): void => {
    if (shown++ === 0) firstShownMs = performance.now() - from;
  };
  const whole = await planOnWorkers(request, { seed, seconds, onPlan });
  if (whole.kind !== "planned") return null;
  const levels = whole.plan.levels.map((level) => ({
    ...level,
    placements: level.placements.filter((_, i) => i % 2 === 0),
  }));
  const thinned: LoadPlan = { ...whole.plan, levels };

  const began = cpuMs();
  let first: { ms: number; value: number } | null = null;
  let packLastBetterMs = 0;
  const packed = planLoad(request, {
    seed,
    workLimit: seconds * WORK_PER_SECOND,
    around: { plan: thinned, keep: "all", pins: [] },
    onProgress: ({ value }) => {
      packLastBetterMs = cpuMs() - began;
      first ??= { ms: packLastBetterMs, value };
    },
  });
  if (packed.kind !== "planned") return null;
  const { ms, value } = first ?? { ms: Number.NaN, value: Number.NaN };
  return {
    seed,
    pieces,
    firstShownMs,
    shown,
    value: valueOfPlan(request, whole.plan),
    thinned: valueOfPlan(request, thinned),
    packFirstMs: ms,
    packLastBetterMs,
    packFirstValue: value,
    packed: valueOfPlan(request, packed.plan),
    broken: checkPlan(request, packed.plan).length,
  };
}

/** The rows of the table about live plans, medians over the seeds. */
export function livePlanRows(plans: readonly LivePlan[]): Row[] {
  return [...new Set(plans.map((plan) => plan.pieces))].flatMap((pieces): Row[] => {
    const some = plans.filter((plan) => plan.pieces === pieces);
    const of = (figure: (plan: LivePlan) => number): number => median(some.map(figure));
    const worstShown = Math.max(...some.map((plan) => plan.firstShownMs));
    const broken = some.reduce((sum, plan) => sum + plan.broken, 0);
    const share = (figure: (plan: LivePlan) => number): string => `${(of(figure) * 100).toFixed(1)} %`;
    return [
      {
        what: `${pieces} waiting: first plan to be seen`,
        target: "≤ 1000 ms",
        found: `${of((plan) => plan.firstShownMs).toFixed(0)} ms by the clock, at worst ${worstShown.toFixed(0)} ms, then ${of((plan) => plan.shown - 1)} more`,
        met: worstShown <= 1000,
      },
      {
        what: `${pieces} waiting: half taken off and packed again, first answer`,
        target: "≤ 100 ms",
        found: `${of((plan) => plan.packFirstMs).toFixed(0)} ms CPU, last better at ${of((plan) => plan.packLastBetterMs).toFixed(0)} ms`,
        met: of((plan) => plan.packFirstMs) <= 100,
      },
      {
        what: `${pieces} waiting: its worth in shares of the whole plan's`,
        target: "",
        found: `${share((plan) => plan.thinned / plan.value)} left standing, ${share((plan) => plan.packFirstValue / plan.value)} at first, ${share((plan) => plan.packed / plan.value)} in the end`,
        met: null,
      },
      {
        what: `${pieces} waiting: rules found broken in what was packed`,
        target: "0",
        found: String(broken),
        met: broken === 0,
      },
    ];
  });
}
