import type { CalibrationFile } from "../firing/calibration/calibration-file.ts";
import type { ConeName } from "../firing/cones/cone.ts";
import { adviceOf } from "../firing/prediction/advice-of.ts";
import { type Prediction, predict } from "../firing/prediction/predict.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { calibratedSetting } from "./firings/newest-calibration.ts";
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
 * @param options the room's temperature in °C; what the kiln's own firings taught of it
 * @throws BadInput where the programme names a cone that is none
 */
export function foretell(
  request: LoadRequest,
  plan: LoadPlan,
  programme: Programme,
  options: { readonly roomC: number; readonly calibration?: CalibrationFile | undefined },
): Foretold {
  const cone = coneWanted(request, plan, programme);
  const { calibration } = options;
  const planned = plannedFiring(request, plan, programme.kind, options.roomC);
  const assumed = [...planned.assumed, ...strangeKiln(request, calibration)];
  const input = {
    ...calibratedSetting(planned.setting, calibration === undefined ? null : { calibration }),
    programme,
  };
  const prediction = predict(input);
  const advice = adviceOf(input, prediction, cone, mayTrade(request, plan)).map(({ sentence }) => sentence);
  return { prediction, cone: cone ?? null, assumed, advice };
}

/** A calibration is of one kiln. Its name may have changed, so it is said and not refused. */
function strangeKiln({ kiln }: LoadRequest, calibration: CalibrationFile | undefined): string[] {
  if (calibration === undefined || calibration.kiln === kiln.name) return [];
  return [`What was learned of "${calibration.kiln}" holds for "${kiln.name}" too: the same kiln under another name.`];
}
