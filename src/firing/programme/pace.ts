import type { FiringKind } from "../cones/firing-kind.ts";

export const PACES = ["slow", "medium", "fast"] as const;
export type Pace = (typeof PACES)[number];

/** How dry raw ware is when the kiln is lit. */
export const DRYNESSES = ["bone-dry", "dry-to-touch", "damp"] as const;
export type Dryness = (typeof DRYNESSES)[number];

/** Rates of a pace, °C/h, and holds, minutes. */
export interface PaceRates {
  /** To below boiling. */
  readonly drying: number;
  /** Hold there when bone dry, or to drive the water of glazing off. */
  readonly dryingHoldMin: number;
  /** Over boiling. */
  readonly boiling: number;
  /** While organics burn. */
  readonly organics: number;
  /** While chemical water leaves and quartz inverts. */
  readonly chemicalWater: number;
  /** From there to the last hundred degrees. */
  readonly climb: number;
  readonly lastHundred: number;
  readonly holdMin: number;
}

const TRADE =
  "trade schedules (golden/programmes): bisque 04 in 12–15 h slow, 9–12 h medium; otherwise common practice, no source";
/** Where the rates below come from. */
export const PACE_SOURCE = TRADE;

const RAW: Record<Pace, PaceRates> = {
  slow: {
    drying: 60,
    dryingHoldMin: 30,
    boiling: 60,
    organics: 110,
    chemicalWater: 100,
    climb: 83,
    lastHundred: 60,
    holdMin: 15,
  },
  medium: {
    drying: 80,
    dryingHoldMin: 15,
    boiling: 80,
    organics: 165,
    chemicalWater: 150,
    climb: 110,
    lastHundred: 60,
    holdMin: 15,
  },
  fast: {
    drying: 120,
    dryingHoldMin: 0,
    boiling: 120,
    organics: 170,
    chemicalWater: 170,
    climb: 170,
    lastHundred: 100,
    holdMin: 0,
  },
};
const GLAZED: Record<Pace, PaceRates> = {
  slow: {
    drying: 60,
    dryingHoldMin: 60,
    boiling: 60,
    organics: 150,
    chemicalWater: 100,
    climb: 150,
    lastHundred: 60,
    holdMin: 15,
  },
  medium: {
    drying: 80,
    dryingHoldMin: 20,
    boiling: 80,
    organics: 200,
    chemicalWater: 200,
    climb: 200,
    lastHundred: 80,
    holdMin: 10,
  },
  fast: {
    drying: 120,
    dryingHoldMin: 0,
    boiling: 120,
    organics: 270,
    chemicalWater: 270,
    climb: 270,
    lastHundred: 110,
    holdMin: 0,
  },
};
const LUSTRE: Record<Pace, PaceRates> = {
  slow: {
    drying: 60,
    dryingHoldMin: 0,
    boiling: 60,
    organics: 80,
    chemicalWater: 80,
    climb: 100,
    lastHundred: 100,
    holdMin: 10,
  },
  medium: {
    drying: 80,
    dryingHoldMin: 0,
    boiling: 80,
    organics: 80,
    chemicalWater: 100,
    climb: 150,
    lastHundred: 150,
    holdMin: 10,
  },
  fast: {
    drying: 120,
    dryingHoldMin: 0,
    boiling: 120,
    organics: 120,
    chemicalWater: 150,
    climb: 200,
    lastHundred: 150,
    holdMin: 5,
  },
};

/** The rates of a kind of firing at a pace. Once-fired ware is raw, so it climbs as a bisque does. */
export function paceRates(kind: FiringKind, pace: Pace): PaceRates {
  if (kind === "glaze") return GLAZED[pace];
  return kind === "lustre" ? LUSTRE[pace] : RAW[pace];
}

/** A wall up to here fires at the pace as it stands, mm. */
const ORDINARY_WALL_MM = 10;
/** Thicker than this it needs more care than a rate can give. */
export const THICKEST_WALL_MM = 60;

/** The share of a rate that a thick raw wall bears: less, the thicker, but no less than a third (common practice, no source). */
export const shareForWall = (thicknessMm: number): number =>
  Math.min(1, Math.max(1 / 3, ORDINARY_WALL_MM / thicknessMm));

/**
 * How long to hold below boiling until raw ware is dry, minutes. Water leaves by diffusion: time grows with the
 * square of the wall (common practice, no source, for the hours at 8 mm).
 */
export function dryingHoldMin(dryness: Dryness, thicknessMm: number, boneDryMin: number): number {
  if (dryness === "bone-dry") return thicknessMm > ORDINARY_WALL_MM ? Math.max(boneDryMin, 30) : boneDryMin;
  const at8mm = dryness === "dry-to-touch" ? 120 : 480;
  return Math.min(24 * 60, Math.max(60, Math.round((at8mm * (thicknessMm / 8) ** 2) / 15) * 15));
}
