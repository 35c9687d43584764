/** A material's thermal properties where it is used. Temperatures in °C. */
export interface Material {
  readonly name: string;
  readonly source: string;
  /** Where the values hold. Outside it the last value is used and the prediction says so. */
  readonly validC: readonly [number, number];
  readonly densityKgPerM3: number;
  /** Conductivity at points, W/m·K: [°C, k], straight between them. */
  readonly conductivity: readonly (readonly [number, number])[];
  /** Specific heat at points, J/kg·K: [°C, c], straight between them. */
  readonly specificHeat: readonly (readonly [number, number])[];
  /** Heats taken up over a range: drying, dehydroxylation, quartz; J for a kilogram of the material. */
  readonly reactions?: readonly {
    readonly name: string;
    readonly fromC: number;
    readonly toC: number;
    readonly joulesPerKg: number;
  }[];
}

const STEP_C = 2;
const LOWEST_C = -100;
const HIGHEST_C = 1600;
const SIZE = (HIGHEST_C - LOWEST_C) / STEP_C + 2;

/**
 * A material made ready for the solver: enthalpy by volume and the conductivity integral (Kirchhoff's transform), each with
 * its slope, on an even grid of temperature, so that a look-up costs a multiplication or two. The tables are integrals of
 * the very slopes they carry: heat is neither made nor lost by looking up.
 */
export interface MaterialTable {
  /** J/m³ above 0 °C at each grid point, and its slope J/m³·K in each interval. */
  readonly enthalpy: Float64Array;
  readonly heatSlope: Float64Array;
  /** W/m above 0 °C at each grid point, and its slope W/m·K in each interval. */
  readonly kirchhoff: Float64Array;
  readonly conductivity: Float64Array;
}

export const GRID = { stepC: STEP_C, lowestC: LOWEST_C, size: SIZE } as const;

export function materialTable(material: Material): MaterialTable {
  const enthalpy = new Float64Array(SIZE);
  const heatSlope = new Float64Array(SIZE);
  const kirchhoff = new Float64Array(SIZE);
  const conductivity = new Float64Array(SIZE);
  for (let i = 0; i < SIZE; i++) {
    const from = LOWEST_C + i * STEP_C;
    const middle = from + STEP_C / 2;
    let heat = at(material.specificHeat, middle);
    for (const reaction of material.reactions ?? []) {
      const shared = Math.max(0, Math.min(from + STEP_C, reaction.toC) - Math.max(from, reaction.fromC));
      heat += (reaction.joulesPerKg * shared) / (reaction.toC - reaction.fromC) / STEP_C;
    }
    heatSlope[i] = heat * material.densityKgPerM3;
    conductivity[i] = at(material.conductivity, middle);
    if (i + 1 < SIZE) {
      enthalpy[i + 1] = (enthalpy[i] as number) + (heatSlope[i] as number) * STEP_C;
      kirchhoff[i + 1] = (kirchhoff[i] as number) + (conductivity[i] as number) * STEP_C;
    }
  }
  return { enthalpy, heatSlope, kirchhoff, conductivity };
}

/** Straight between points, level beyond them. */
export function at(points: readonly (readonly [number, number])[], x: number): number {
  const first = points[0] as readonly [number, number];
  if (x <= first[0]) return first[1];
  for (let i = 1; i < points.length; i++) {
    const [x1, y1] = points[i] as readonly [number, number];
    const [x0, y0] = points[i - 1] as readonly [number, number];
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return (points.at(-1) as readonly [number, number])[1];
}
