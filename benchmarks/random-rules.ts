import { loadValueBound } from "../src/loading/bound/load-value-bound.ts";
import { checkPlan } from "../src/loading/checker/check-plan.ts";
import { planLoad } from "../src/loading/planner/plan-load.ts";
import { randomRequest } from "../src/loading/testing/random-requests.ts";
import type { Row } from "./row.ts";
import { valueOfPlan } from "./single-loads.ts";

/** What the checker and the bound said of many random loads. */
export interface RandomRules {
  readonly loads: number;
  readonly impossible: number;
  /** Seeds whose plan breaks a rule, with the first break. */
  readonly broken: readonly { readonly seed: number; readonly message: string }[];
  /** Seeds whose plan is worth more than the bound allows. */
  readonly overBound: readonly number[];
}

/** Plans random requests with little work each, checks every plan and holds it against the bound. */
export function randomRules(loads: number, firstSeed = 0): RandomRules {
  const broken: { seed: number; message: string }[] = [];
  const overBound: number[] = [];
  let impossible = 0;
  for (let seed = firstSeed; seed < firstSeed + loads; seed++) {
    const request = randomRequest(seed);
    const outcome = planLoad(request, { seed, workLimit: 20_000 });
    if (outcome.kind === "impossible") {
      impossible++;
      continue;
    }
    const [found] = checkPlan(request, outcome.plan);
    if (found) broken.push({ seed, message: found.message });
    if (valueOfPlan(request, outcome.plan) > loadValueBound(request).value + 1e-6) overBound.push(seed);
  }
  return { loads, impossible, broken, overBound };
}

export function randomRulesRows({ loads, impossible, broken, overBound }: RandomRules): Row[] {
  return [
    {
      what: `random loads that break a rule, of ${loads} (${impossible} cannot be loaded)`,
      target: "0",
      found: broken.length === 0 ? "0" : `${broken.length}: ${broken[0]!.message} (seed ${broken[0]!.seed})`,
      met: broken.length === 0,
    },
    {
      what: "random loads worth more than their bound",
      target: "0",
      found: overBound.length === 0 ? "0" : `${overBound.length}: seeds ${overBound.slice(0, 5).join(", ")}`,
      met: overBound.length === 0,
    },
  ];
}
