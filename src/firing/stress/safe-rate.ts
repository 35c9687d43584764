import { BadInput } from "../../measures/bad-input.ts";
import {
  CLAYS,
  type ClayName,
  type ClayStrength,
  clayHeatCapacity,
  INVERSIONS,
  POISSON_RATIO,
} from "./clay-strength.ts";

/**
 * The length over which a piece with a shielded face or foot evens out: a plate on its shelf, a thick ring under a
 * heavy pot. The trade's 50 °C/h through 573 °C only follows with about this length; walls alone bear far more.
 */
export const SHIELDED_LENGTH_M = 0.1;

export interface StressQuestion {
  readonly clay: ClayName;
  /** Half a wall's thickness where both faces are heated, the whole where one is, `SHIELDED_LENGTH_M` at a shielded foot. */
  readonly lengthM: number;
  readonly direction: "heating" | "cooling";
  readonly temperatureC: number;
}

export interface SafeRate {
  /** The rate at which stress reaches the clay's strength, °C/h. */
  readonly rateCPerHour: number;
  /** The difference of temperature across the length at that rate, °C. */
  readonly differenceC: number;
  /** The inversion that limits it, or null. */
  readonly inversion: string | null;
  readonly source: string;
}

const FORMULA =
  "parabolic quasi-steady profile; same form in Štubňa, Trník, Chmelík, Vozár, InTech 2011, doi 10.5772/19199";

/**
 * How fast a piece may be heated or cooled before it cracks of its own temperature differences.
 *
 * Heating: 6 a (1−ν) σ / (E α L²), tension in the middle; cooling: 3 a (1−ν) σ / (E α L²), tension at the face; the
 * difference across L is r L² / (2 a). No factor of safety is in it beyond the weakest strength of the clay's range.
 * Within an inversion the body's expansion is the inversion's.
 *
 * @throws BadInput for a length that is none
 */
export function safeRate({ clay, lengthM, direction, temperatureC }: StressQuestion): SafeRate {
  if (!(lengthM > 0 && lengthM <= 1)) {
    throw new BadInput({
      code: "out-of-range",
      path: "lengthM",
      found: String(lengthM),
      expected: "a length above 0, up to 1 m",
    });
  }
  const strength: ClayStrength = CLAYS[clay];
  const inversion = INVERSIONS.find(({ fromC, toC }) => temperatureC >= fromC && temperatureC <= toC);
  const expansion = Math.max(strength.expansionPerK, inversion?.expansionPerK ?? 0);
  const diffusivity = strength.conductivityWPerMK / (strength.densityKgPerM3 * clayHeatCapacity(temperatureC));
  const factor = direction === "heating" ? 6 : 3;
  const strain = ((1 - POISSON_RATIO) * strength.strengthPa) / (strength.stiffnessPa * expansion);
  const perSecond = (factor * diffusivity * strain) / (lengthM * lengthM);
  return {
    rateCPerHour: perSecond * 3600,
    differenceC: (perSecond * lengthM * lengthM) / (2 * diffusivity),
    inversion: inversion?.name ?? null,
    source: `${FORMULA}; ${strength.name}: ${strength.source}${inversion ? `; ${inversion.name}: ${inversion.source}` : ""}`,
  };
}
