import { checkPlan } from "../../loading/checker/check-plan.ts";
import type { LoadPlan } from "../../loading/load-plan.ts";
import type { LoadRequest } from "../../loading/load-request.ts";

const ALIKE = 1e-9;

/**
 * Whether a planned load may take the place of the one that stands: it holds no fewer of the pieces that must fire, and
 * then is worth no less. A load that breaks rules, or holds nothing, may always be replaced.
 */
export function isNoWorse(request: LoadRequest, plan: LoadPlan, standing: LoadPlan | null): boolean {
  if (standing === null || standing.levels.every(({ placements }) => placements.length === 0)) return true;
  const [now, then] = [worth(request, plan), worth(request, standing)];
  if (now.mustFire !== then.mustFire) return now.mustFire > then.mustFire || checkPlan(request, standing).length > 0;
  return now.value >= then.value - ALIKE || checkPlan(request, standing).length > 0;
}

/** How many pieces stand in the kiln. */
export const piecesIn = (plan: LoadPlan): number =>
  plan.levels.reduce((sum, level) => sum + level.placements.length, 0);

function worth(request: LoadRequest, plan: LoadPlan): { mustFire: number; value: number } {
  const kinds = new Map(request.ware.map((ware) => [ware.name, ware]));
  let mustFire = 0;
  let value = 0;
  for (const { placements } of plan.levels) {
    for (const placement of placements) {
      const kind = kinds.get(placement.ware);
      if (kind?.mustFire) mustFire++;
      value += kind?.value ?? 0;
    }
  }
  return { mustFire, value };
}
