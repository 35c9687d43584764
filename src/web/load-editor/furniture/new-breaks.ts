import { type Broken, checkPlan } from "../../../loading/checker/check-plan.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";

const key = ({ rule, things }: Broken): string => `${rule}: ${things.join(", ")}`;

/**
 * Tells what a changed plan breaks that the plan before did not: what she is about to do, not what was wrong already.
 *
 * @param before measured once, when the first is asked about
 * @returns a function to be asked of each plan on the way
 */
export function newBreaks(request: LoadRequest, before: LoadPlan): (plan: LoadPlan) => Broken[] {
  let known: ReadonlySet<string> | null = null;
  return (plan) => {
    known ??= new Set(checkPlan(request, before).map(key));
    const there = known;
    return checkPlan(request, plan).filter((broken) => !there.has(key(broken)));
  };
}
