import { BadInput } from "../../measures/bad-input.ts";
import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";
import type { Calibration, CalibrationRequest, LearnedParameter, Misfit, NextEvidence } from "./calibration.ts";
import { type Comparison, compare } from "./compare.ts";
import type { EvidenceKind } from "./evidence.ts";
import { asRow, asUnsure, type Foretold, foretell, type Unsure, unsureInAll } from "./foretold.ts";
import { differences, information, inverse, type Jacobian, leastSquares, spread } from "./least-squares.ts";
import { type MeasuredFiring, measuredFiring } from "./measured-firing.ts";
import { missingEvidence } from "./next-evidence.ts";
import {
  AT_REST,
  PARAMETERS,
  type ParameterName,
  type ParameterValues,
  type ThermalSetting,
  valuesFromSteps,
  withValues,
} from "./parameters.ts";
import { replay } from "./replay.ts";
import { statements } from "./statements.ts";

/** A prediction is differenced over this share of what is still unsure: `fire` chooses its own steps, with a small error each. */
const NARROW = 0.5;

/**
 * Fits a kiln's unknowns to her own firings: the most probable values given what was measured and what was believed
 * before, by Levenberg and Marquardt's method on the logarithms of factors; how sure they are from the curvature there.
 *
 * The load's mass factor belongs to the loads that were fired: a habit of weighing, not a property of the kiln.
 *
 * @throws BadInput where evidence cannot be used
 */
export function calibrate(request: CalibrationRequest): Calibration {
  const { kiln, load, programme, priors = {} } = request;
  const probeHeightM = request.probeHeightM ?? kiln.depthM / 2;
  if (request.evidence.length === 0) {
    throw new BadInput({
      code: "no-evidence",
      path: "evidence",
      found: "no firing",
      expected: "the log of at least one firing",
    });
  }
  const firings = request.evidence.map((each, i) => measuredFiring(each, load, `evidence[${i}]`));
  const settingAt = (steps: Float64Array, of: ThermalLoad = load): ThermalSetting =>
    withValues(kiln, of, valuesFromSteps(steps, priors));
  const comparisonsAt = (steps: Float64Array, of: readonly MeasuredFiring[]): Comparison[] =>
    of.flatMap((firing) => {
      const setting = settingAt(steps, firing.load);
      return compare(firing, replay(firing, setting, probeHeightM), setting.kiln.powerW);
    });
  const sigmasOf = (of: readonly MeasuredFiring[]) => (steps: Float64Array) =>
    Float64Array.from(comparisonsAt(steps, of), (each) => each.inSigmas);

  const size = PARAMETERS.length;
  const found = leastSquares(sigmasOf(firings), size);
  const covariance = inverse(information([found.jacobian], size));
  const rest = new Float64Array(size);
  const foretellAt = (steps: Float64Array): Foretold => foretell(settingAt(steps), programme, probeHeightM);
  const [foretoldBefore, foretoldAfter] = [foretellAt(rest), foretellAt(found.point)];
  const byPrediction = differences(
    (steps) => asRow(foretellAt(steps)),
    found.point,
    asRow(foretoldAfter),
    (i) => NARROW * sigma(covariance, i),
  );
  const unsureWith = (each: readonly Float64Array[]): Unsure => asUnsure(spread(byPrediction, each));
  const unsure = unsureWith(covariance);

  const next = missingEvidence(firings, settingAt(found.point), probeHeightM).map(
    ({ kind, how, trial }): NextEvidence => {
      const taught: Jacobian = differences(sigmasOf([trial]), found.point);
      const then = inverse(information([found.jacobian, taught], size));
      const unsureThen = unsureWith(then);
      return {
        kind,
        how,
        left: leftOf(then),
        unsure: unsureThen,
        surerBy: 1 - unsureInAll(unsureThen) / unsureInAll(unsure),
      };
    },
  );
  next.sort((a, b) => b.surerBy - a.surerBy);

  const values = valuesFromSteps(found.point, priors);
  const parameters = PARAMETERS.map(({ name, label, unit, priorSigma }, i): LearnedParameter => {
    const prior = priors[name]?.sigma ?? priorSigma;
    const left = sigma(covariance, i);
    return { name, label, unit, value: values[name], sigma: left * prior, priorSigma: prior, left };
  });
  const result = {
    values,
    parameters,
    correlations: PARAMETERS.map((_, i) =>
      PARAMETERS.map(
        (_, j) => ((covariance[i] as Float64Array)[j] as number) / (sigma(covariance, i) * sigma(covariance, j)),
      ),
    ),
    misfits: misfits(comparisonsAt(rest, firings), comparisonsAt(found.point, firings)),
    before: { ...foretoldBefore, unsure: unsureWith(identity(size)) },
    after: { ...foretoldAfter, unsure },
    next,
    fit: Math.sqrt(found.residuals.reduce((sum, each) => sum + each * each, 0) / Math.max(1, found.residuals.length)),
    settled: found.settled,
  };
  return { ...result, notes: statements(result) };
}

/** The kiln, load and probe to predict with after a calibration. */
export function calibrated(
  kiln: ThermalKiln,
  load: ThermalLoad,
  calibration: { readonly values: ParameterValues },
): ThermalSetting {
  return withValues(kiln, load, { ...AT_REST, ...calibration.values });
}

const sigma = (covariance: readonly Float64Array[], i: number): number =>
  Math.sqrt((covariance[i] as Float64Array)[i] as number);

const leftOf = (covariance: readonly Float64Array[]): Record<ParameterName, number> =>
  Object.fromEntries(PARAMETERS.map(({ name }, i) => [name, sigma(covariance, i)])) as Record<ParameterName, number>;

const identity = (size: number): Float64Array[] =>
  Array.from({ length: size }, (_, i) => Float64Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));

const UNITS = {
  temperature: "°C",
  cooling: "°C",
  "full power": "°C",
  power: "% of full power",
  cones: "°C",
  meter: "kWh",
} as const;

function misfits(before: readonly Comparison[], after: readonly Comparison[]): Misfit[] {
  const rms = (of: readonly Comparison[], kind: EvidenceKind): number => {
    const these = of.filter((each) => each.kind === kind);
    return Math.sqrt(these.reduce((sum, each) => sum + each.apart * each.apart, 0) / these.length);
  };
  return [...new Set(after.map((each) => each.kind))].map((kind) => ({
    kind,
    unit: UNITS[kind],
    count: after.filter((each) => each.kind === kind).length,
    before: rms(before, kind),
    after: rms(after, kind),
  }));
}
