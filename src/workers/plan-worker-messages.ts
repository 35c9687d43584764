import type { LoadRequest } from "../loading/load-request.ts";
import type { PlanOutcome, PlanProgress } from "../loading/planner/plan-load.ts";

/** What a plan worker is started with. */
export interface PlanWorkerTask {
  readonly request: LoadRequest;
  readonly seed: number;
  readonly workLimit: number;
  readonly milliseconds: number;
  /** One Int32: 1 once the search has to stop. */
  readonly stopFlag: SharedArrayBuffer;
}

/** What a plan worker says. */
export type FromPlanWorker =
  | { readonly kind: "progress"; readonly progress: PlanProgress }
  | { readonly kind: "outcome"; readonly outcome: PlanOutcome };
