import type { ConeName } from "../firing/cones/cone.ts";
import { adviceOf } from "../firing/prediction/advice-of.ts";
import { type Prediction, predict } from "../firing/prediction/predict.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { mayTrade } from "./may-trade.ts";
import { coneWanted, plannedFiring } from "./planned-firing.ts";

/** A prediction for a planned load, and what was taken for granted to make it. */
export interface Foretold {
  readonly prediction: Prediction;
  /** The cone it was held against: the programme's, or the one all the ware asks for. */
  readonly cone: ConeName | null;
  readonly assumed: readonly string[];
  /** What would bring the cone down or even the load out, each tried in this kiln with this load. */
  readonly advice: readonly string[];
}

/**
 * Foretells a planned load's firing: the plan's levels become the kiln's zones, the programme runs at the probe.
 *
 * @param request the request the plan answers
 * @param options the room's temperature in °C
 * @throws BadInput where the programme names a cone that is none
 */
export function foretell(
  request: LoadRequest,
  plan: LoadPlan,
  programme: Programme,
  options: { readonly roomC: number },
): Foretold {
  const cone = coneWanted(request, plan, programme);
  const { setting, assumed } = plannedFiring(request, plan, programme.kind, options.roomC);
  const input = { ...setting, programme };
  const prediction = predict(input);
  const advice = adviceOf(input, prediction, cone, mayTrade(request, plan)).map(({ sentence }) => sentence);
  return { prediction, cone: cone ?? null, assumed, advice };
}
