import type { FiringKind } from "../cones/firing-kind.ts";
import { type Dryness, dryingHoldMin, type Pace, paceRates, shareForWall } from "./pace.ts";
import type { Segment, Stage } from "./programme.ts";

export const ENDINGS = ["natural", "drop-and-hold", "slow-cool"] as const;
export type Ending = (typeof ENDINGS)[number];

/** All that shapes a programme but its peak. */
export interface ProgrammeShape {
  readonly kind: FiringKind;
  readonly pace: Pace;
  readonly holdMin: number;
  readonly thicknessMm: number;
  readonly dryness: Dryness;
  readonly ending: Ending;
  /** Cooling held back through the quartz and cristobalite inversions. */
  readonly guardedCooling: boolean;
  /** Rate of the last hundred degrees, °C/h. */
  readonly lastRateCPerHour: number;
}

const BELOW_BOILING_C = 90;
const ABOVE_BOILING_C = 120;
/** Ware that is not bone dry climbs no faster until it is over boiling (common practice, no source). */
const STILL_DRYING_C_PER_HOUR = 60;
/** Chemical water leaves clay between about 450 and 650 °C; quartz inverts at 573. */
const CHEMICAL_WATER_FROM_C = 450;
const CHEMICAL_WATER_TO_C = 650;
/** Bisqued ware meets quartz alone. */
const QUARTZ_FROM_C = 540;
const QUARTZ_TO_C = 610;
const LAST_C = 100;
/** A drop heals pinholes where the glaze still moves, crystals grow further down (common practice, no source). */
const DROP_C = 55;
const DROP_HOLD_MIN = 30;
/** Hesselberth & Roy, Mastering Cone 6 Glazes, p. 144 (web copy): down to 1000 °C, then 70 °C/h to 760. */
const CRYSTALS_FROM_C = 1000;
const CRYSTALS_TO_C = 760;
const CRYSTALS_C_PER_HOUR = 70;
/** Fortuna, Sanitaryware 2000: 50 °C/h through 573 °C for thick ware. */
const GUARDED_C_PER_HOUR = 50;

/** The segments of a firing that peaks at a temperature, each with its stage and its reason. */
export function draftSegments(shape: ProgrammeShape, peakC: number): Segment[] {
  return [...heating(shape, peakC), ...cooling(shape, peakC)];
}

const segment = (
  stage: Stage,
  rateCPerHour: number | null,
  targetC: number,
  holdMin: number,
  reason: string,
): Segment => ({
  rateCPerHour: rateCPerHour === null ? null : Math.round(rateCPerHour),
  targetC: Math.round(targetC),
  holdMin: Math.round(holdMin),
  stage,
  reason,
});

function heating(shape: ProgrammeShape, peakC: number): Segment[] {
  const { kind, thicknessMm, dryness } = shape;
  const rates = paceRates(kind, shape.pace);
  const raw = kind === "bisque" || kind === "once-fired";
  const share = raw ? shareForWall(thicknessMm) : 1;
  const wettest = dryness === "bone-dry" ? Number.POSITIVE_INFINITY : STILL_DRYING_C_PER_HOUR;
  const lastFrom = peakC - LAST_C;
  const segments: Segment[] = [];
  const upTo = (stage: Stage, rate: number, targetC: number, holdMin: number, reason: string): void => {
    const target = Math.min(targetC, lastFrom);
    const reached = segments.at(-1)?.targetC ?? 0;
    if (target > reached + 1) segments.push(segment(stage, rate, target, target < targetC ? 0 : holdMin, reason));
  };
  if (raw) {
    const hold = dryingHoldMin(dryness, thicknessMm, rates.dryingHoldMin);
    const dry = hold > 0 ? "hold below boiling until the ware is dry through" : "the ware is bone dry";
    upTo("drying", Math.min(rates.drying * share, wettest), BELOW_BOILING_C, hold, `Water of the clay leaves; ${dry}.`);
    upTo(
      "boiling",
      Math.min(rates.boiling * share, wettest),
      ABOVE_BOILING_C,
      0,
      "Over boiling: steam shut in a wall doubles its pressure by 120 °C.",
    );
    upTo("organics", rates.organics * share, CHEMICAL_WATER_FROM_C, 0, "Organics begin to burn; vent open.");
    upTo(
      "chemical water",
      rates.chemicalWater * share,
      CHEMICAL_WATER_TO_C,
      0,
      "Chemical water leaves the clay (450–650 °C) and quartz inverts at 573 °C.",
    );
    upTo(
      "climb",
      rates.climb * Math.sqrt(share),
      lastFrom,
      0,
      "Carbon and sulphur burn out, to be gone by 900–950 °C; vent open till then.",
    );
  } else if (kind === "lustre") {
    upTo(
      "organics",
      rates.organics,
      400,
      0,
      "Oils and resins of lustre and decals burn off: lid ajar or vent open, room aired.",
    );
    upTo("climb", rates.climb, lastFrom, 0, "Up to where the glaze softens just enough to hold the metal.");
  } else {
    upTo("drying", rates.drying, 105, rates.dryingHoldMin, "Water from glazing leaves before it can lift the glaze.");
    if (rates.chemicalWater < rates.organics) {
      upTo("climb", rates.organics, QUARTZ_FROM_C, 0, "Bisqued ware bears a quicker climb.");
      upTo(
        "chemical water",
        rates.chemicalWater,
        QUARTZ_TO_C,
        0,
        "Quartz inverts at 573 °C; slow pace spares large ware.",
      );
    }
    upTo("climb", rates.climb, lastFrom, 0, "Up to where the glaze begins to work.");
  }
  const hold = shape.holdMin > 0 ? `; held ${shape.holdMin} min to even the kiln out` : "";
  const last = Math.round(shape.lastRateCPerHour);
  segments.push(
    segment(
      "last hundred",
      last,
      peakC,
      shape.holdMin,
      `The last 100 °C at ${last} °C/h: at such rates cones are published${hold}.`,
    ),
  );
  return segments;
}

function cooling({ ending, guardedCooling }: ProgrammeShape, peakC: number): Segment[] {
  const segments: Segment[] = [];
  if (ending === "drop-and-hold") {
    segments.push(
      segment(
        "drop hold",
        null,
        peakC - DROP_C,
        DROP_HOLD_MIN,
        `Dropped ${DROP_C} °C and held: pinholes heal, and the cones go little further.`,
      ),
    );
  }
  if (ending === "slow-cool") {
    const from = Math.min(CRYSTALS_FROM_C, peakC - LAST_C);
    const to = Math.min(CRYSTALS_TO_C, from - LAST_C);
    segments.push(segment("drop", null, from, 0, "Down quickly to where crystals grow."));
    segments.push(segment("slow cool", CRYSTALS_C_PER_HOUR, to, 0, "Slowly here, for crystals and a satin surface."));
  }
  if (guardedCooling) {
    segments.push(segment("drop", null, 620, 0, "Natural cooling; no stress while the glaze is soft."));
    segments.push(
      segment(
        "guarded quartz",
        GUARDED_C_PER_HOUR,
        540,
        0,
        "Quartz inverts at 573 °C: thick or shielded ware dunts when hurried.",
      ),
    );
    segments.push(segment("drop", null, 280, 0, "Natural cooling."));
    segments.push(
      segment("guarded cristobalite", GUARDED_C_PER_HOUR, 180, 0, "Cristobalite inverts at 226 °C; lid shut."),
    );
  }
  return segments;
}
