import { calibrate } from "../../firing/calibration/calibrate.ts";
import type { Calibration } from "../../firing/calibration/calibration.ts";
import { type CalibrationFile, calibrationFile, priorsOf } from "../../firing/calibration/calibration-file.ts";
import { PARAMETERS, type ParameterName, type Priors } from "../../firing/calibration/parameters.ts";
import type { Programme } from "../../firing/programme/programme.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { plannedFiring } from "../planned-firing.ts";
import type { CalibrationRecord, Learned } from "../records/calibration-record.ts";
import { FIRINGS } from "../records/firing-record.ts";
import { recordPath } from "../records/refusals.ts";
import { firingEvidence, type MeasuredRecords } from "./firing-evidence.ts";
import { USUAL_ROOM_C } from "./foretold-record.ts";

/**
 * How much less sure of a kiln each firing since its last calibration makes: elements wear, a door settles. One standard
 * deviation a firing, of ln(factor) or in the parameter's unit. Judgement, no published source.
 */
export const DRIFT_A_FIRING: Readonly<Partial<Record<ParameterName, number>>> = {
  powerFactor: 0.006,
  wallFactor: 0.01,
  leakFactor: 0.03,
  probeOffsetC: 0.5,
  tilt: 0.004,
  middleShare: 0.004,
};

/** What some firings taught, ready to be kept. */
export interface LearnedFromFirings {
  readonly calibration: CalibrationFile;
  readonly learned: Learned;
}

/**
 * Learns from firings of one kiln: what was believed before, of its description or of an earlier calibration, and what
 * these firings show. The programme it weighs by is the newest one's. Takes about a second a firing.
 *
 * @param fired in any order; at least one
 * @param earlier the calibration to begin from, of other firings; null to begin from the kiln as described
 * @throws BadInput where a firing cannot teach anything
 */
export function learnFromFirings(
  fired: readonly MeasuredRecords[],
  earlier: CalibrationRecord | null,
): LearnedFromFirings {
  const inOrder = [...fired].sort((a, b) => ((a.firing.startedAt ?? "") < (b.firing.startedAt ?? "") ? -1 : 1));
  const newest = inOrder.at(-1);
  const programme = newest?.firing.programme;
  if (newest === undefined || !programme || newest.load.plan === null) {
    const path = newest === undefined ? "firingIds" : recordPath(FIRINGS, newest.firing.id);
    const expected = "at least one firing with a programme and a planned load";
    throw new BadInput({ code: "nothing-to-learn", path, found: "nothing to foretell by", expected });
  }
  const request = readLoadRequest(newest.load.request);
  const { setting } = plannedFiring(request, readLoadPlan(newest.load.plan, request), programme.kind, USUAL_ROOM_C);
  const probe = request.kiln.probes[0]?.name;
  const result = calibrate({
    ...{ kiln: setting.kiln, load: setting.load, programme: programme as Programme },
    evidence: inOrder.map((each) => firingEvidence(each, probe)),
    ...(earlier === null ? {} : { priors: driftedPriors(earlier.calibration, inOrder.length) }),
    ...(setting.probeHeightM === undefined ? {} : { probeHeightM: setting.probeHeightM }),
  });
  return { calibration: calibrationFile(request.kiln.name, result), learned: learnedOf(result) };
}

/** An earlier calibration as what is believed before, a little less sure for every firing since. */
export function driftedPriors(file: CalibrationFile, firingsSince: number): Priors {
  const drifted = Object.entries(priorsOf(file)).map(([name, { value, sigma }]) => {
    const usual = PARAMETERS.find((each) => each.name === name)?.priorSigma ?? sigma;
    const drift = (DRIFT_A_FIRING[name as ParameterName] ?? 0) * Math.sqrt(firingsSince);
    return [name, { value, sigma: Math.min(Math.max(usual, sigma), Math.hypot(sigma, drift)) }] as const;
  });
  return Object.fromEntries(drifted);
}

function learnedOf({ fit, settled, misfits, before, after, next, notes }: Calibration): Learned {
  const told = ({ kWh, shelvesC, coolHours, finished, unsure }: Calibration["before"]): Learned["before"] => ({
    ...{ kWh, shelvesC: [...shelvesC], coolHours, finished },
    unsure: { kWhPercent: unsure.kWhPercent, shelfC: unsure.shelfC, coolPercent: unsure.coolPercent },
  });
  return {
    ...{ fit, settled, before: told(before), after: told(after), notes: [...notes] },
    misfits: misfits.map(({ kind, unit, count, before: from, after: to }) => ({
      kind,
      unit,
      count,
      before: from,
      after: to,
    })),
    next: next.map(({ kind, how, surerBy }) => ({ kind, how, surerBy })),
  };
}
