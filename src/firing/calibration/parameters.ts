import type { ThermalKiln, ThermalLoad } from "../thermal/kiln-network.ts";

/**
 * What a calibration may learn. A factor multiplies the value the kiln was described with; the others are added. At rest
 * (`1` for a factor, `0` for the rest) the kiln is as described.
 */
export type ParameterName =
  | "wallFactor"
  | "wareMassFactor"
  | "powerFactor"
  | "leakFactor"
  | "openFactor"
  | "probeOffsetC"
  | "tilt"
  | "middleShare";

export interface Parameter {
  readonly name: ParameterName;
  /** As a potter reads it. */
  readonly label: string;
  readonly kind: "factor" | "added";
  readonly unit: "" | "°C";
  /** How unsure it is before anything was measured, one standard deviation: of ln(factor), or in its unit. */
  readonly priorSigma: number;
}

const PRIOR_SOURCE =
  "Wareboard's own identifiability study of a prototype of this model (Fisher information, ident.mjs and recover.mjs); judgement, no published source";

const parameter = (
  name: ParameterName,
  label: string,
  kind: Parameter["kind"],
  priorSigma: number,
  unit: Parameter["unit"] = "",
): Parameter => ({ name, label, kind, unit, priorSigma });

/** Every parameter with its prior, and where the priors come from. */
export const PARAMETERS: readonly Parameter[] = [
  parameter("wallFactor", "how well the wall conducts heat", "factor", 0.4),
  parameter("wareMassFactor", "mass of the ware", "factor", 0.3),
  parameter("powerFactor", "power of the elements", "factor", 0.1),
  parameter("leakFactor", "leak of vent and cracks", "factor", 0.5),
  parameter("openFactor", "open way past the shelves", "factor", 0.1),
  parameter("probeOffsetC", "how much too high the probe reads", "added", 10, "°C"),
  parameter("tilt", "more power at the top than at the bottom", "added", 0.1),
  parameter("middleShare", "more power in the middle than at the ends", "added", 0.15),
];
export const PRIORS_SOURCE = PRIOR_SOURCE;

export type ParameterValues = Readonly<Record<ParameterName, number>>;

/** The kiln as described. */
export const AT_REST: ParameterValues = {
  wallFactor: 1,
  wareMassFactor: 1,
  powerFactor: 1,
  leakFactor: 1,
  openFactor: 1,
  probeOffsetC: 0,
  tilt: 0,
  middleShare: 0,
};

/** Another prior for a parameter: its middle, and its sigma (of ln(factor), or in its unit). */
export interface Prior {
  readonly value: number;
  readonly sigma: number;
}
export type Priors = Readonly<Partial<Record<ParameterName, Prior>>>;

/** Values from steps away from the priors' middles, each step in sigmas of its prior. */
export function valuesFromSteps(steps: Float64Array, priors: Priors): ParameterValues {
  const values: Record<string, number> = {};
  PARAMETERS.forEach(({ name, kind, priorSigma }, i) => {
    const middle = priors[name]?.value ?? AT_REST[name];
    const away = (steps[i] as number) * (priors[name]?.sigma ?? priorSigma);
    values[name] = kind === "factor" ? middle * Math.exp(away) : middle + away;
  });
  return values as ParameterValues;
}

/** A kiln, load and probe that some values make. */
export interface ThermalSetting {
  readonly kiln: ThermalKiln;
  readonly load: ThermalLoad;
  /** The probe reads this much above its place. */
  readonly probeOffsetC: number;
}

/** The kiln and load with some values of the parameters put in. */
export function withValues(kiln: ThermalKiln, load: ThermalLoad, values: ParameterValues): ThermalSetting {
  return {
    kiln: {
      ...kiln,
      wallFactor: kiln.wallFactor * values.wallFactor,
      powerW: kiln.powerW * values.powerFactor,
      leakWattsPerK: kiln.leakWattsPerK * values.leakFactor,
      bandShares: shifted(kiln.bandShares, values.tilt, values.middleShare),
    },
    load: {
      ...load,
      massFactor: load.massFactor * values.wareMassFactor,
      levels: load.levels.map((level) => ({ ...level, openAreaM2: level.openAreaM2 * values.openFactor })),
    },
    probeOffsetC: values.probeOffsetC,
  };
}

/**
 * Power moved between bands: by `tilt` of a band's own from the floor to the lid, by `middleShare` from the ends to the
 * middle. Fewer than three bands are split first, so that there is something to move.
 */
function shifted(shares: readonly number[], tilt: number, middle: number): number[] {
  const split = shares.length === 1 ? 3 : shares.length === 2 ? 2 : 1;
  const bands = shares.flatMap((share) => new Array<number>(split).fill(share / split));
  return bands.map((share, i) => {
    const height = (2 * i) / (bands.length - 1) - 1;
    return share * Math.max(0.05, 1 + tilt * height + middle * (1 - 1.5 * Math.abs(height)));
  });
}
