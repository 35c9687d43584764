import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import type { PlanAround } from "../loading/planner/plan-around.ts";
import type { PlanOutcome, PlanProgress } from "../loading/planner/plan-load.ts";

/** What a plan worker is asked to do. */
export interface PlanWorkerTask {
  readonly request: LoadRequest;
  readonly around: PlanAround | null;
  readonly seed: number;
  readonly workLimit: number;
  readonly milliseconds: number;
  /** Plans are told no oftener than this; null where nobody wants to see any before the last. */
  readonly plansEveryMs: number | null;
  /** One Int32: 1 once the search has to stop. */
  readonly stopFlag: SharedArrayBuffer;
}

/** What a plan worker says. */
export type FromPlanWorker =
  | { readonly kind: "progress"; readonly progress: PlanProgress }
  | { readonly kind: "better"; readonly progress: PlanProgress; readonly plan: LoadPlan }
  | { readonly kind: "outcome"; readonly outcome: PlanOutcome };
