import { type ConeName, conePlace } from "../cones/cone.ts";
import type { FiringKind } from "../cones/firing-kind.ts";
import { parseCone } from "../cones/parse-cone.ts";
import type { Curve } from "../heat-work/curve.ts";
import { type HeatWork, heatWork } from "../heat-work/heat-work.ts";
import { degreesBeyond } from "../heat-work/ladder-position.ts";
import type { ClayName } from "../stress/clay-strength.ts";
import { safeRate } from "../stress/safe-rate.ts";
import { fastestThrough } from "./band-rate.ts";
import { peakSegment, programmeCurve } from "./ideal-curve.ts";
import type { Dryness } from "./pace.ts";
import type { Programme } from "./programme.ts";
import { bandsFor } from "./temperature-bands.ts";

/** One thing found in a programme: facts for machines, a sentence for her. */
export interface ProgrammeFinding {
  readonly code:
    | "does-not-reach"
    | "over-fires"
    | "peak-not-reached"
    | "above-rating"
    | "too-fast"
    | "too-many-segments"
    | "stress"
    | "work-not-sure";
  /** A fault keeps the programme from doing its job; a caution is hers to weigh; a note tells. */
  readonly gravity: "fault" | "caution" | "note";
  /** The segment it is about, from 0, or null for the whole. */
  readonly segment: number | null;
  readonly message: string;
}

export interface ProgrammeCheck {
  /** The cone to reach; the programme's own where left out. */
  readonly cone?: ConeName | undefined;
  readonly kind?: FiringKind | undefined;
  readonly thicknessMm?: number | undefined;
  readonly dryness?: Dryness | undefined;
  readonly mostSegments?: number | undefined;
  /** The hottest the kiln is rated for, °C. */
  readonly hottestC?: number | undefined;
  /** The length over which a shielded foot or a flat piece evens out, m: asks for the stress check too. */
  readonly shieldedLengthM?: number | undefined;
  readonly clay?: ClayName | undefined;
  /** What the kiln makes of the programme; an ideal kiln where left out. */
  readonly simulate?: ((programme: Programme) => Curve) | undefined;
  /** The hottest the probe reads, °C, where the curve is the ware's: the kiln gets to its targets by its probe. */
  readonly probePeakC?: number | undefined;
}

export interface CheckedProgramme {
  readonly curve: Curve;
  readonly heatWork: HeatWork;
  /** True where no fault was found. */
  readonly good: boolean;
  readonly findings: readonly ProgrammeFinding[];
}

/** Warnings about how a log was read, which a programme's own curve never is. */
const ABOUT_READINGS: readonly string[] = ["starts-hot", "ends-hot", "coarse-readings"];
/** Heat work of more than this beyond a cone is another cone's firing, °C. */
const OVERFIRED_C = 12;
/** A kiln this far below a target did not follow, °C. */
const NOT_FOLLOWED_C = 5;

/**
 * Checks a programme as it stands, to be called again at every edit: does it reach its cone, does it hurry through
 * boiling, organics or an inversion, can the controller take it, does the kiln follow.
 *
 * @param programme from `readProgramme` or `writeProgramme`, or being edited
 */
export function checkProgramme(programme: Programme, check: ProgrammeCheck = {}): CheckedProgramme {
  const curve = (check.simulate ?? programmeCurve)(programme);
  const reached = heatWork(curve);
  const findings = [
    ...coneFindings(programme, check, reached),
    ...kilnFindings(programme, check.probePeakC ?? reached.peakC),
    ...limitFindings(programme, check),
    ...bandFindings(programme, check, curve),
    ...stressFindings(check, curve),
    ...reached.warnings
      .filter(({ code }) => !ABOUT_READINGS.includes(code))
      .map(({ message }): ProgrammeFinding => ({ code: "work-not-sure", gravity: "note", segment: null, message })),
  ];
  return { curve, heatWork: reached, good: findings.every(({ gravity }) => gravity !== "fault"), findings };
}

function coneFindings(programme: Programme, check: ProgrammeCheck, reached: HeatWork): ProgrammeFinding[] {
  const cone = check.cone ?? (programme.cone === undefined ? undefined : parseCone(programme.cone));
  if (cone === undefined) return [];
  const { work } = reached.cones[conePlace(cone)] as HeatWork["cones"][number];
  const segment = peakSegment(programme);
  const beyond = degreesBeyond(cone, work);
  if (work < 1) {
    const lacking = Number.isFinite(beyond) ? `about ${Math.ceil(-beyond)} °C or a longer hold` : "most of the climb";
    const message = `Cone ${cone} gets ${Math.round(work * 100)} % of its work: ${lacking} is missing.`;
    return [{ code: "does-not-reach", gravity: "fault", segment, message }];
  }
  if (beyond > OVERFIRED_C) {
    const message = `Cone ${cone} is down with ${Math.round(beyond)} °C of heat work to spare: this is nearer cone ${reached.coneDown}.`;
    return [{ code: "over-fires", gravity: "caution", segment, message }];
  }
  return [];
}

function kilnFindings(programme: Programme, reachedC: number): ProgrammeFinding[] {
  const segment = peakSegment(programme);
  const targetC = programme.segments[segment]?.targetC ?? 0;
  if (reachedC >= targetC - NOT_FOLLOWED_C) return [];
  const message = `The kiln gets to ${Math.round(reachedC)} °C, not to ${targetC}: it lacks the power, or the time.`;
  return [{ code: "peak-not-reached", gravity: "fault", segment, message }];
}

function limitFindings(programme: Programme, { mostSegments, hottestC }: ProgrammeCheck): ProgrammeFinding[] {
  const { segments } = programme;
  const findings: ProgrammeFinding[] = [];
  if (mostSegments !== undefined && segments.length > mostSegments) {
    const message = `${segments.length} segments; the controller takes ${mostSegments}.`;
    findings.push({ code: "too-many-segments", gravity: "fault", segment: null, message });
  }
  const segment = peakSegment(programme);
  const peakC = segments[segment]?.targetC ?? 0;
  if (hottestC !== undefined && peakC > hottestC) {
    const message = `${peakC} °C is above the ${hottestC} °C the kiln is rated for.`;
    findings.push({ code: "above-rating", gravity: "fault", segment, message });
  }
  return findings;
}

function bandFindings(programme: Programme, check: ProgrammeCheck, curve: Curve): ProgrammeFinding[] {
  const kind = check.kind ?? programme.kind;
  if (kind === undefined) return [];
  const ware = { kind, dryness: check.dryness ?? "bone-dry", thicknessMm: check.thicknessMm ?? 8 } as const;
  return bandsFor(ware).flatMap((band): ProgrammeFinding[] => {
    const rate = fastestThrough(curve, band.fromC, band.toC, band.direction);
    // Half a degree an hour is rounding, not haste.
    if (rate === null || rate <= band.mostCPerHour + 0.5) return [];
    const message = `${band.fromC} to ${band.toC} °C goes at ${Math.round(rate)} °C/h when ${band.direction}; at most ${band.mostCPerHour} is wanted, for ${band.why}.`;
    return [
      { code: "too-fast", gravity: "caution", segment: segmentThrough(programme, band.fromC, band.direction), message },
    ];
  });
}

function segmentThrough({ segments }: Programme, celsius: number, direction: "heating" | "cooling"): number | null {
  let from = 20;
  for (const [i, { targetC }] of segments.entries()) {
    if (direction === "heating" ? from <= celsius && targetC > celsius : from > celsius && targetC <= celsius) return i;
    from = targetC;
  }
  return null;
}

/** Where a shielded length is given, the rates at which it cracks, against the curve's. */
function stressFindings({ shieldedLengthM, clay = "stoneware" }: ProgrammeCheck, curve: Curve): ProgrammeFinding[] {
  if (shieldedLengthM === undefined) return [];
  const places = [
    { fromC: 550, toC: 600, temperatureC: 573 },
    { fromC: 200, toC: 270, temperatureC: 226 },
  ];
  return places.flatMap(({ fromC, toC, temperatureC }): ProgrammeFinding[] => {
    const rate = fastestThrough(curve, fromC, toC, "cooling");
    const safe = safeRate({ clay, lengthM: shieldedLengthM, direction: "cooling", temperatureC });
    if (rate === null || rate <= safe.rateCPerHour) return [];
    const length = `${Math.round(shieldedLengthM * 1000)} mm`;
    const message = `Cooling through ${temperatureC} °C at ${Math.round(rate)} °C/h: a piece that evens out over ${length} (a shielded foot, a plate) bears about ${Math.round(safe.rateCPerHour)}.`;
    return [{ code: "stress", gravity: "caution", segment: null, message }];
  });
}
