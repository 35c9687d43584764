import { loadValueBound } from "../src/loading/bound/load-value-bound.ts";
import { checkPlan } from "../src/loading/checker/check-plan.ts";
import type { LoadPlan } from "../src/loading/load-plan.ts";
import type { LoadRequest } from "../src/loading/load-request.ts";
import { planLoad } from "../src/loading/planner/plan-load.ts";
import { planOnWorkers, WORK_PER_SECOND } from "../src/workers/plan-on-workers.ts";
import { benchmarkRequest } from "./instances.ts";
import { median, percent, type Row } from "./row.ts";
import { loadByHand } from "./yardsticks/by-hand.ts";
import { loadFairly } from "./yardsticks/fair.ts";

/** One waiting shelf, loaded by the planner and by both yardsticks. Times in milliseconds; CPU time of the whole process. */
export interface SingleLoad {
  readonly seed: number;
  readonly pieces: number;
  readonly value: number;
  readonly byHand: number;
  readonly fair: number;
  readonly bound: number;
  readonly boundCpuMs: number;
  readonly firstCpuMs: number;
  readonly firstWallMs: number;
  readonly lastBetterCpuMs: number;
  readonly cpuMs: number;
  readonly wallMs: number;
  readonly broken: number;
}

export interface SingleLoadOptions {
  readonly seeds: number;
  /** CPU seconds of one core to plan in; with threads, seconds by the clock. */
  readonly seconds: number;
  /** Worker threads; 0 plans in this thread. */
  readonly threads: number;
}

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

export function valueOfPlan(request: LoadRequest, plan: LoadPlan | null): number {
  const values = new Map(request.ware.map((ware) => [ware.name, ware.value]));
  return (plan?.levels ?? [])
    .flatMap((level) => level.placements)
    .reduce((sum, placement) => sum + (values.get(placement.ware) ?? 0), 0);
}

/** Loads one benchmark shelf every way. */
export async function singleLoad(seed: number, pieces: number, options: SingleLoadOptions): Promise<SingleLoad> {
  const request = benchmarkRequest(seed, pieces);
  const boundFrom = cpuMs();
  const bound = loadValueBound(request).value;
  const boundCpuMs = cpuMs() - boundFrom;
  const byHand = valueOfPlan(request, loadByHand(request));
  const fair = valueOfPlan(request, loadFairly(request));

  const cpuFrom = cpuMs();
  const wallFrom = performance.now();
  let first: { cpu: number; wall: number } | null = null;
  let lastBetterCpuMs = 0;
  const onProgress = (): void => {
    lastBetterCpuMs = cpuMs() - cpuFrom;
    first ??= { cpu: lastBetterCpuMs, wall: performance.now() - wallFrom };
  };
  const limitMs = options.seconds * 1000;
  const outcome =
    options.threads > 0
      ? await planOnWorkers(request, { seed, seconds: options.seconds, workers: options.threads, onProgress })
      : planLoad(request, {
          seed,
          workLimit: options.seconds * WORK_PER_SECOND,
          onProgress,
          shouldStop: () => cpuMs() - cpuFrom > limitMs,
        });
  const plan = outcome.kind === "planned" ? outcome.plan : null;
  const { cpu, wall } = first ?? { cpu: Number.NaN, wall: Number.NaN };
  return {
    seed,
    pieces,
    value: valueOfPlan(request, plan),
    byHand,
    fair,
    bound,
    boundCpuMs,
    firstCpuMs: cpu,
    firstWallMs: wall,
    lastBetterCpuMs,
    cpuMs: cpuMs() - cpuFrom,
    wallMs: performance.now() - wallFrom,
    broken: plan ? checkPlan(request, plan).length : 0,
  };
}

/** The rows of the table about single loads, medians over the seeds. */
export function singleLoadRows(loads: readonly SingleLoad[]): Row[] {
  const of = (pieces: number, figure: (load: SingleLoad) => number): number =>
    median(loads.filter((load) => load.pieces === pieces).map(figure));
  const worst = (pieces: number, figure: (load: SingleLoad) => number): number =>
    Math.max(...loads.filter((load) => load.pieces === pieces).map(figure));
  const rows: Row[] = [];
  for (const pieces of [...new Set(loads.map((load) => load.pieces))]) {
    const first = of(pieces, (load) => load.firstCpuMs);
    const final = of(pieces, (load) => load.cpuMs);
    const overFair = of(pieces, (load) => load.value / load.fair - 1);
    const overHand = of(pieces, (load) => load.value / load.byHand - 1);
    const gap = of(pieces, (load) => (load.bound - load.value) / load.bound);
    const small = pieces <= 40;
    const most = small ? 0.14 : 0.18;
    const time = (cpu: number, wall: number): string => `${cpu.toFixed(0)} ms CPU, ${wall.toFixed(0)} ms by the clock`;
    rows.push(
      {
        what: `${pieces} waiting: first answer`,
        target: small ? "≤ 100 ms" : "",
        found: time(
          first,
          of(pieces, (load) => load.firstWallMs),
        ),
        met: small ? first <= 100 : null,
      },
      {
        what: `${pieces} waiting: final answer`,
        target: small ? "≤ 2000 ms" : "",
        found: `${time(
          final,
          of(pieces, (load) => load.wallMs),
        )}, last better at ${of(pieces, (load) => load.lastBetterCpuMs).toFixed(0)} ms`,
        met: small ? final <= 2050 : null,
      },
      {
        what: `${pieces} waiting: value over the fair yardstick`,
        target: "≥ +22 %",
        found: percent(overFair),
        met: overFair >= 0.22,
      },
      {
        what: `${pieces} waiting: value over loading by hand`,
        target: "",
        found: percent(overHand),
        met: null,
      },
      {
        what: `${pieces} waiting: gap to the bound`,
        target: `≤ ${(most * 100).toFixed(0)} %`,
        found: `${(gap * 100).toFixed(1)} % (worst seed ${(worst(pieces, (load) => (load.bound - load.value) / load.bound) * 100).toFixed(1)} %)`,
        met: gap <= most,
      },
      {
        what: `${pieces} waiting: time for the bound`,
        target: small ? "≤ 50 ms" : "≤ 300 ms",
        found: `${of(pieces, (load) => load.boundCpuMs).toFixed(0)} ms CPU`,
        met: of(pieces, (load) => load.boundCpuMs) <= (small ? 50 : 300),
      },
      {
        what: `${pieces} waiting: rules the checker found broken`,
        target: "0",
        found: String(worst(pieces, (load) => load.broken)),
        met: worst(pieces, (load) => load.broken) === 0,
      },
    );
  }
  return rows;
}
