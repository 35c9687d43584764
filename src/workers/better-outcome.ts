import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import type { PlanOutcome } from "../loading/planner/plan-load.ts";

/** The better of two outcomes: fewer pieces that had to fire left out, then the greater value; the first where alike. */
export function betterOutcome(request: LoadRequest, first: PlanOutcome, second: PlanOutcome): PlanOutcome {
  if (second.kind === "impossible") return first;
  if (first.kind === "impossible") return second;
  const missed = mustFireLeft(request, second.plan) - mustFireLeft(request, first.plan);
  if (missed !== 0) return missed < 0 ? second : first;
  return valueOfPlan(second.plan) > valueOfPlan(first.plan) + 1e-9 ? second : first;
}

function mustFireLeft(request: LoadRequest, plan: LoadPlan): number {
  const must = new Set(request.ware.filter((ware) => ware.mustFire).map((ware) => ware.name));
  return plan.left.reduce((sum, left) => sum + (must.has(left.ware) ? left.count : 0), 0);
}

const valueOfPlan = (plan: LoadPlan): number => (typeof plan.figures.value === "number" ? plan.figures.value : 0);
