import type { ConeName } from "../../../firing/cones/cone.ts";
import { adviceOf } from "../../../firing/prediction/advice-of.ts";
import { type Prediction, predict } from "../../../firing/prediction/predict.ts";
import { wareCurve } from "../../../firing/prediction/ware-curve.ts";
import { checkProgramme, type ProgrammeFinding } from "../../../firing/programme/check-programme.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import {
  type ProgrammeWish,
  type WrittenProgramme,
  writeProgramme,
} from "../../../firing/programme/write-programme.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { USUAL_ROOM_C } from "../../../studio/firings/foretold-record.ts";
import { calibratedSetting } from "../../../studio/firings/newest-calibration.ts";
import { mayTrade } from "../../../studio/may-trade.ts";
import { coneWanted, type PlannedFiring, plannedFiring, wareCurves } from "../../../studio/planned-firing.ts";
import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";

/** A load standing in its kiln, as far as the kiln is known. */
export interface LoadedKiln {
  /** Another whenever load or kiln are another. */
  readonly key: string;
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly calibration: Pick<CalibrationRecord, "calibration"> | null;
}

/** What can be asked of a loaded kiln. All of it is reckoned, and takes from a tenth of a second to some seconds. */
export type KilnQuestion =
  | { readonly kind: "write"; readonly kiln: LoadedKiln | null; readonly wish: Omit<ProgrammeWish, "simulate"> }
  | { readonly kind: "foretell"; readonly kiln: LoadedKiln; readonly programme: Programme }
  | { readonly kind: "advise"; readonly kiln: LoadedKiln; readonly programme: Programme };

/** A firing foretold for a load, and what is to be said of its programme in this kiln. */
export interface ForetoldHere {
  readonly prediction: Prediction;
  readonly cone: ConeName | null;
  readonly assumed: readonly string[];
  readonly findings: readonly ProgrammeFinding[];
}

/** What each question is answered with. */
export interface KilnAnswers {
  readonly write: WrittenProgramme;
  readonly foretell: ForetoldHere;
  readonly advise: readonly string[];
}

/**
 * Answers a question about a loaded kiln. Pure: the worker only carries it.
 *
 * @throws BadInput where the question cannot be answered, such as a cone the kiln never reaches
 */
export function answerKiln<Question extends KilnQuestion>(question: Question): KilnAnswers[Question["kind"]];
export function answerKiln(question: KilnQuestion): KilnAnswers[KilnQuestion["kind"]] {
  if (question.kind === "write") return written(question.kiln, question.wish);
  const { kiln, programme } = question;
  const planned = calibrated(kiln, programme.kind);
  const input = { ...planned.setting, programme };
  const prediction = predict(input);
  const cone = coneWanted(kiln.request, kiln.plan, programme);
  if (question.kind === "foretell") {
    const findings = findingsIn(planned, programme, prediction, cone);
    return { prediction, cone: cone ?? null, assumed: planned.assumed, findings };
  }
  return adviceOf(input, prediction, cone, mayTrade(kiln.request, kiln.plan)).map(({ sentence }) => sentence);
}

/** Cones and rates are the ware's; whether the kiln gets to its targets is the probe's, for the programme steers by it. */
function findingsIn(
  { setting }: PlannedFiring,
  programme: Programme,
  { firing, peakC }: Prediction,
  cone: ConeName | undefined,
): readonly ProgrammeFinding[] {
  const simulate = () => wareCurve(firing, setting.load);
  return checkProgramme(programme, { cone, simulate, probePeakC: peakC }).findings;
}

/** Aimed with the ware as it stands in this kiln; with a kiln that follows any climb where there is no load. */
function written(kiln: LoadedKiln | null, wish: Omit<ProgrammeWish, "simulate">): WrittenProgramme {
  return writeProgramme(kiln === null ? wish : { ...wish, simulate: wareCurves(calibrated(kiln, wish.kind)) });
}

function calibrated({ request, plan, calibration }: LoadedKiln, kind: Programme["kind"]): PlannedFiring {
  const planned = plannedFiring(request, plan, kind, USUAL_ROOM_C);
  return { ...planned, setting: calibratedSetting(planned.setting, calibration) };
}
