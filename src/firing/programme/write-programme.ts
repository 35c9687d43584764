import { BadInput } from "../../measures/bad-input.ts";
import type { ConeName } from "../cones/cone.ts";
import { formatConeRange, isInRange } from "../cones/cone-range.ts";
import { type FiringKind, usualCones } from "../cones/firing-kind.ts";
import type { Curve } from "../heat-work/curve.ts";
import { workOf } from "../heat-work/questions.ts";
import { lowestPeak } from "./aim-programme.ts";
import { draftSegments, type Ending, type ProgrammeShape } from "./draft-programme.ts";
import { programmeCurve } from "./ideal-curve.ts";
import { mergedTo } from "./merge-segments.ts";
import { type Dryness, type Pace, paceRates, THICKEST_WALL_MM } from "./pace.ts";
import { PROGRAMME_FORMAT, type Programme } from "./programme.ts";

/** What a programme is wanted for. */
export interface ProgrammeWish {
  readonly cone: ConeName;
  readonly kind: FiringKind;
  readonly pace: Pace;
  /** Hold at the peak, minutes; the pace's own where left out. */
  readonly holdMin?: number | undefined;
  /** Thickest wall or foot, mm; 8 where left out. */
  readonly thicknessMm?: number | undefined;
  /** Raw ware only; bone dry where left out. */
  readonly dryness?: Dryness | undefined;
  readonly ending?: Ending | undefined;
  /** Cooling held back through the inversions; by itself for walls of 15 mm and more. */
  readonly guardedCooling?: boolean | undefined;
  /** Rate of the last hundred degrees, °C/h; the pace's own where left out. */
  readonly lastRateCPerHour?: number | undefined;
  /** The hottest the kiln is rated for, °C. */
  readonly hottestC?: number | undefined;
  /** How many segments the controller takes. */
  readonly mostSegments?: number | undefined;
  readonly name?: string | undefined;
  /** What the kiln makes of a programme, at the ware; an ideal kiln where left out. Cooling belongs to it. */
  readonly simulate?: ((programme: Programme) => Curve) | undefined;
}

export interface WrittenProgramme {
  readonly programme: Programme;
  /** Work of the wished cone on the simulated curve: 1 or a little more. */
  readonly work: number;
  readonly peakC: number;
  readonly notes: readonly string[];
}

const ORDINARY_WALL_MM = 8;
const THICK_WALL_MM = 15;

/**
 * Writes a programme that lays a cone down: the stages of its kind at a pace, the peak found by simulating it, cooling
 * counted, so that the work reaches 1 and not a degree more than whole degrees need.
 *
 * @throws BadInput for a wish that cannot be: a cone out of the kind's range, a wall too thick, a kiln that never gets there
 */
export function writeProgramme(wish: ProgrammeWish): WrittenProgramme {
  const shape = shapeOf(wish);
  const simulate = wish.simulate ?? programmeCurve;
  const at = (peakC: number): Programme => ({
    format: PROGRAMME_FORMAT,
    name: wish.name ?? `cone ${wish.cone} ${wish.kind}, ${wish.pace}`,
    cone: wish.cone,
    kind: wish.kind,
    segments:
      wish.mostSegments === undefined
        ? draftSegments(shape, peakC)
        : mergedTo(draftSegments(shape, peakC), wish.mostSegments),
  });
  const work = (peakC: number): number => workOf(wish.cone, simulate(at(peakC)));
  const peakC = lowestPeak(wish.cone, work, wish.hottestC);
  return { programme: at(peakC), work: work(peakC), peakC, notes: notesOn(wish, shape) };
}

function shapeOf(wish: ProgrammeWish): ProgrammeShape {
  const { kind, pace, cone } = wish;
  const range = usualCones(kind);
  const refuse = (code: string, path: string, found: string, expected: string): never => {
    throw new BadInput({ code, path, found, expected });
  };
  if (!isInRange(cone, kindReaches(kind))) {
    refuse(
      "cone-out-of-range",
      "cone",
      `cone ${cone} for a ${kind} firing`,
      `${formatConeRange(kindReaches(kind))}; usual are ${formatConeRange(range)}`,
    );
  }
  const rates = paceRates(kind, pace);
  const inRange = (path: string, value: number, low: number, high: number, unit: string): number =>
    value >= low && value <= high ? value : refuse("out-of-range", path, String(value), `${low} to ${high} ${unit}`);
  const thicknessMm = inRange(
    "thicknessMm",
    wish.thicknessMm ?? ORDINARY_WALL_MM,
    1,
    THICKEST_WALL_MM,
    "mm; thicker ware needs a programme of its own",
  );
  return {
    kind,
    pace,
    thicknessMm,
    dryness: wish.dryness ?? "bone-dry",
    ending: wish.ending ?? "natural",
    guardedCooling: wish.guardedCooling ?? thicknessMm >= THICK_WALL_MM,
    holdMin: inRange("holdMin", wish.holdMin ?? rates.holdMin, 0, 600, "minutes"),
    lastRateCPerHour: inRange("lastRateCPerHour", wish.lastRateCPerHour ?? rates.lastHundred, 15, 400, "°C/h"),
  };
}

/** A kind may be fired beyond what is usual, within reason: bisque to a cone that still takes glaze, lustre before glaze melts. */
function kindReaches(kind: FiringKind): { coolest: ConeName; hottest: ConeName } {
  if (kind === "lustre") return usualCones("lustre");
  return kind === "bisque" ? { coolest: "012", hottest: "10" } : { coolest: "015", hottest: "14" };
}

function notesOn(wish: ProgrammeWish, { kind, dryness }: ProgrammeShape): string[] {
  const notes: string[] = [];
  const usual = usualCones(kind);
  if (!isInRange(wish.cone, usual))
    notes.push(`Cone ${wish.cone} is outside what is usual for ${kind}: ${formatConeRange(usual)}.`);
  if (dryness === "damp" && (kind === "bisque" || kind === "once-fired"))
    notes.push("Damp ware is safer dried in the air first: steam bursts walls, however slow the kiln.");
  return notes;
}
