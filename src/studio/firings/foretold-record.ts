import type { Prediction } from "../../firing/prediction/predict.ts";
import { predict } from "../../firing/prediction/predict.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import { firingCost } from "../../firing/tariff/firing-cost.ts";
import { energyUntil, firingEnergy } from "../../firing/tariff/firing-energy.ts";
import type { Tariff } from "../../firing/tariff/tariff.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { coneWanted, plannedFiring } from "../planned-firing.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";
import type { ForetoldRecord } from "../records/firing-parts.ts";
import { LOADS, type LoadRecord } from "../records/load-record.ts";
import { recordPath } from "../records/refusals.ts";
import { calibratedSetting } from "./newest-calibration.ts";

/** The room's temperature where nobody said, °C. */
export const USUAL_ROOM_C = 20;

/** What a load's firing is foretold from. */
export interface ForetoldWish {
  readonly load: LoadRecord;
  readonly programme: Programme;
  /** The newest of its kiln; null as the kiln is described. */
  readonly calibration: CalibrationRecord | null;
  readonly tariff?: Tariff | undefined;
  /** When it is to be switched on: a tariff with slots cannot be reckoned without. */
  readonly startAt?: string | undefined;
  readonly roomC?: number;
}

/** A load's firing foretold with the kiln as it is known now: the prediction, and the snapshot a firing keeps of it. */
export interface ForetoldLoad {
  readonly prediction: Prediction;
  readonly foretold: ForetoldRecord;
}

/**
 * Foretells the firing of a load that has a plan.
 *
 * @throws BadInput `no-plan`, or where the programme names a cone that is none
 */
export function foretellLoad({ load, programme, calibration, tariff, startAt, roomC }: ForetoldWish): ForetoldLoad {
  if (load.plan === null) {
    throw new BadInput({
      code: "no-plan",
      path: recordPath(LOADS, load.id),
      found: "a load that is not planned yet",
      expected: "one whose pieces have places: plan it first, by hand or by the planner",
    });
  }
  const request = readLoadRequest(load.request);
  const plan = readLoadPlan(load.plan, request);
  const cone = coneWanted(request, plan, programme) ?? null;
  const planned = plannedFiring(request, plan, programme.kind, roomC ?? USUAL_ROOM_C);
  const prediction = predict({ ...calibratedSetting(planned.setting, calibration), programme });
  const { hours, kWh, peakC, levels, coolHours, curve } = prediction;
  const foretold: ForetoldRecord = {
    ...{ hours, kWh, peakC, cone, coolHours },
    levels: levels.map(({ level, peakC: levelPeakC, ladder, offsetC }) => ({
      ...{ level, peakC: levelPeakC, ladder, offsetC },
    })),
    curve: curve.map(([minute, celsius]) => [minute, celsius]),
    cost: costOf(prediction, tariff, startAt),
    kWhEachHour: kWhEachHour(prediction.firing),
    assumed: [...planned.assumed],
    ...(calibration === null ? {} : { calibrationId: calibration.id }),
  };
  return { prediction, foretold };
}

/** What a programme costs by a tariff; null where there is none, or where its slots need a start nobody gave. */
function costOf({ firing }: Prediction, tariff: Tariff | undefined, startAt: string | undefined): number | null {
  if (tariff === undefined) return null;
  const needsStart = (tariff.slots ?? []).length > 0 || tariff.demand !== undefined;
  if (startAt === undefined && needsStart) return null;
  return firingCost(firing, tariff, startAt ?? "2000-01-01T00:00:00Z").total;
}

/** Energy hour by hour from the start, up to where the last is drawn. */
export function kWhEachHour(firing: Prediction["firing"]): number[] {
  const energy = firingEnergy(firing);
  const hours = Math.ceil(energy.hours.at(-1) ?? 0);
  return Array.from({ length: hours }, (_, hour) => energyUntil(energy, hour + 1) - energyUntil(energy, hour));
}
