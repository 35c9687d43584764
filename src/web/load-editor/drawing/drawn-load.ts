import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { type SheetLoad, sheetLoad } from "../../../sheets/sheet-load.ts";

let last: { readonly request: LoadRequest; readonly plan: LoadPlan; readonly load: SheetLoad } | null = null;

/**
 * What the drawings show, numbered as on the printed sheet. Plan and elevation ask for the same load one after the other:
 * the last answer is kept.
 *
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function drawnLoad(request: LoadRequest, plan: LoadPlan): SheetLoad {
  if (last?.request === request && last.plan === plan) return last.load;
  const load = sheetLoad(request, plan);
  last = { request, plan, load };
  return load;
}
