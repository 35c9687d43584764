/** What a clay needs to be known for to say how fast it may be heated or cooled. */
export interface ClayStrength {
  readonly name: string;
  /** Thermal conductivity, W/(m K). */
  readonly conductivityWPerMK: number;
  /** kg/m³. */
  readonly densityKgPerM3: number;
  /** Linear expansion away from any inversion, 1/K. */
  readonly expansionPerK: number;
  /** Bending strength, Pa: the weakest of its range. */
  readonly strengthPa: number;
  /** Young's modulus, Pa. */
  readonly stiffnessPa: number;
  readonly source: string;
}

/** Poisson's ratio of fired clay (from memory). */
export const POISSON_RATIO = 0.2;

export const CLAYS = {
  "green clay": {
    name: "dry green clay",
    conductivityWPerMK: 0.6,
    densityKgPerM3: 1850,
    expansionPerK: 6e-6,
    strengthPa: 1e6,
    stiffnessPa: 5e9,
    source: "from memory; 1–4 MPa; expansion taken from earthenware's range 6–8",
  },
  earthenware: {
    name: "earthenware, and any bisque",
    conductivityWPerMK: 0.8,
    densityKgPerM3: 1900,
    expansionPerK: 7e-6,
    strengthPa: 10e6,
    stiffnessPa: 15e9,
    source: "from memory; 10–20 MPa, expansion 6–8",
  },
  stoneware: {
    name: "vitrified stoneware",
    conductivityWPerMK: 1.5,
    densityKgPerM3: 2300,
    expansionPerK: 6e-6,
    strengthPa: 30e6,
    stiffnessPa: 50e9,
    source: "from memory; 30–50 MPa, expansion 5.5–7",
  },
  porcelain: {
    name: "porcelain",
    conductivityWPerMK: 1.8,
    densityKgPerM3: 2400,
    expansionPerK: 5.35e-6,
    strengthPa: 50e6,
    stiffnessPa: 70e9,
    source: "expansion: cone-10 porcelain, C. Martell 2001; rest from memory; 50–80 MPa",
  },
} as const satisfies Record<string, ClayStrength>;
export type ClayName = keyof typeof CLAYS;

/** A stretch of temperature in which crystals of the body change size at once, and by how much they make it expand. */
export interface Inversion {
  readonly name: string;
  readonly fromC: number;
  readonly toC: number;
  /** The whole body's expansion there, 1/K. */
  readonly expansionPerK: number;
  readonly source: string;
}

export const INVERSIONS: readonly Inversion[] = [
  {
    name: "quartz",
    fromC: 550,
    toC: 600,
    expansionPerK: 20e-6,
    source:
      "573 °C, 0.45 % linear: Dodd & Murfin, Dictionary of Ceramics (wiki copies); 20e-6 for a body with about a quarter of quartz over 50 °C: derived",
  },
  {
    name: "cristobalite",
    fromC: 200,
    toC: 270,
    expansionPerK: 20e-6,
    source:
      "220 °C: Taylor & Bull, Ceramics Glaze Technology; 1 % linear from memory; 20e-6 for a body with a tenth of cristobalite over 70 °C: derived",
  },
];

/**
 * Heat capacity of fired clay, J/(kg K): Michot, Smith, Degot, Lecomte-Nana, J. Eur. Ceram. Soc. 31 (2011) 1377, for
 * dehydroxylated kaolin between 313 and 1373 K, beyond which it is held.
 */
export function clayHeatCapacity(celsius: number): number {
  const kelvin = Math.min(1373, Math.max(313, celsius + 273.15));
  return 1128 + 0.102 * kelvin - 36e6 / (kelvin * kelvin);
}
