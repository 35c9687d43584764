import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";
import type { PlacementPlace, PlanAround } from "../../loading/planner/plan-around.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import type { PlanEvent, PlanWish } from "../../studio/api/contract.ts";
import { KINDS } from "../../studio/records/all-kinds.ts";
import type { LoadRecord } from "../../studio/records/load-record.ts";
import { unknownRecord } from "../../studio/records/refusals.ts";
import { planOnWorkers } from "../../workers/plan-on-workers.ts";
import type { Threads } from "../../workers/ready-threads.ts";
import type { Studio } from "../studio.ts";
import { isNoWorse, piecesIn } from "./no-worse.ts";
import type { PlanJob } from "./plan-job.ts";
import type { DoPlanJob } from "./plan-jobs.ts";

const USUAL_SECONDS = 2;
const USUAL_SEED = 1;

/** A load about to be planned, as it was when the planning began. */
interface Before {
  readonly load: LoadRecord;
  readonly request: LoadRequest;
  /** What stands in it. */
  readonly standing: LoadPlan | null;
}

/** Plans a load on worker threads and keeps the result with it, by a command that can be undone. */
export const planAndKeep =
  (studio: Studio, threads: Threads, complain: (error: Error) => void): DoPlanJob =>
  async (job, wish) => {
    try {
      job.end(await planned(studio, threads, job, wish));
    } catch (error) {
      const isRefusal = error instanceof BadInput;
      if (!isRefusal) complain(error as Error);
      const message = isRefusal ? error.message : "Wareboard itself failed. The load is as it was.";
      job.end({ kind: "failed", message });
    }
  };

async function planned(studio: Studio, threads: Threads, job: PlanJob, wish: PlanWish): Promise<PlanEvent> {
  const before = await read(studio, wish.loadId);
  const around = aroundOf(before, wish.keep);
  const outcome = await planOnWorkers(before.request, {
    seed: wish.seed ?? USUAL_SEED,
    seconds: wish.seconds ?? USUAL_SECONDS,
    signal: job.signal,
    threads,
    ...(around === null ? {} : { around }),
    onPlan: (plan) => job.better(betterEvent(plan)),
  });
  if (outcome.kind === "impossible") {
    if (job.signal.aborted) return { kind: "stopped" };
    return { kind: "impossible", reasons: outcome.reasons.map(({ message }) => message) };
  }
  job.better(betterEvent(outcome.plan));
  if (job.signal.aborted) return { kind: "stopped" };
  return kept(studio, before, outcome.plan, outcome.pins);
}

function aroundOf({ load, standing }: Before, keep: PlanWish["keep"]): PlanAround | null {
  return keep === "nothing" || standing === null ? null : { plan: standing, keep, pins: load.pins };
}

async function kept(
  studio: Studio,
  { load, request, standing }: Before,
  plan: LoadPlan,
  pins: readonly PlacementPlace[],
): Promise<PlanEvent> {
  if (!isNoWorse(request, plan, standing)) {
    return { kind: "not-kept", plan, reason: "Nothing better came of it: the load as it stands is worth more." };
  }
  const pieces = piecesIn(plan);
  const note = `planned ${pieces} ${pieces === 1 ? "piece" : "pieces"}`;
  try {
    const input = { id: load.id, version: load.version, plan, pins, note };
    return { kind: "kept", answer: await studio.command("change-load", { key: studio.newId(), input }) };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    const changed = error.code === "changed-since";
    const reason = changed ? "The load was changed while this was planned, so it stays as it is." : error.message;
    return { kind: "not-kept", plan, reason };
  }
}

async function read(studio: Studio, id: string): Promise<Before> {
  const load = await studio.store.read((records) => records.loads.get(id));
  if (load === null) throw unknownRecord(KINDS.loads, id);
  const request = readLoadRequest(load.request);
  return { load, request, standing: load.plan === null ? null : readLoadPlan(load.plan, request) };
}

function betterEvent(plan: LoadPlan): Extract<PlanEvent, { kind: "better" }> {
  const { value } = plan.figures;
  return { kind: "better", pieces: piecesIn(plan), value: typeof value === "number" ? value : 0, plan };
}
