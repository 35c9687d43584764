import type { ConeName } from "../firing/cones/cone.ts";
import { type Climb, canClimb, wornShareAtLimit } from "../firing/elements/can-climb.ts";
import { MEASURING_CAUTION } from "../firing/elements/element-condition.ts";
import type { Programme } from "../firing/programme/programme.ts";
import type { LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";
import { plannedFiring } from "./planned-firing.ts";

/** Whether a kiln can still fire this load to this cone, and how much wear of its elements would end that. */
export interface StillClimbs extends Climb {
  /** As the kiln's build says; 0 where it does not. */
  readonly wornShare: number;
  /** The wear at which it no longer climbs to the cone even at 15 °C/h; null where it does not when new either. */
  readonly wornShareLimit: number | null;
  readonly sentences: readonly string[];
}

/** Runs the kiln with this load at full power, on the supply and with the wear that its build tells of. */
export function stillClimbs(
  request: LoadRequest,
  plan: LoadPlan,
  kind: Programme["kind"],
  roomC: number,
  cone: ConeName,
): StillClimbs {
  const { kiln, load, probeHeightM } = plannedFiring(request, plan, kind, roomC).setting;
  const wornShare = request.kiln.build?.wornShare ?? 0;
  const question = { kiln, load, cone, ...(probeHeightM === undefined ? {} : { probeHeightM }) };
  const climb = canClimb(question);
  const whenNew = { ...kiln, powerW: kiln.powerW * (1 + wornShare) };
  const wornShareLimit = wornShareAtLimit({ ...question, kiln: whenNew }, "at all");
  const now = wornShare === 0 ? "" : ` (now ${Math.round(wornShare * 100)} %)`;
  const limit =
    wornShareLimit === null
      ? `Even new elements on this supply do not bring this load to cone ${cone}.`
      : `Once their resistance has risen by ${Math.ceil(wornShareLimit * 100)} %${now}, cone ${cone} is out of reach with this load.`;
  return { ...climb, wornShare, wornShareLimit, sentences: [climb.sentence, limit, MEASURING_CAUTION] };
}
