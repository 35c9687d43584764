/** A material's thermal properties where it is used. Temperatures in °C. */
export interface Material {
  readonly name: string;
  readonly source: string;
  /** Where the values hold. Outside it they are carried on, and the prediction says so (`outsideRange`). */
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
  /** What it is for good once all of it has been above a temperature: water driven off does not come back as it cools. */
  readonly fired?: { readonly aboveC: number; readonly as: Material };
}

/** The even grid that the solver's tables stand on. */
export const GRID = { stepC: 2, lowestC: -100, size: 852 } as const;

/**
 * A material made ready for the solver: enthalpy by volume and the conductivity integral (Kirchhoff's transform), each with
 * its slope, on an even grid of temperature, so that a look-up costs a multiplication or two. The tables are integrals of
 * the very slopes they carry: heat is neither made nor lost by looking up. Each slope is the true mean over its interval,
 * so that the integrals are exact at every grid point.
 */
export interface MaterialTable {
  /** J/m³ above the grid's lowest temperature at each grid point, and its slope J/m³·K in each interval. */
  readonly enthalpy: Float64Array;
  readonly heatSlope: Float64Array;
  /** W/m above the grid's lowest temperature at each grid point, and its slope W/m·K in each interval. */
  readonly kirchhoff: Float64Array;
  readonly conductivity: Float64Array;
}

const made = new WeakMap<Material, MaterialTable>();

/** A material's tables, made once for each material object. */
export function materialTable(material: Material): MaterialTable {
  const before = made.get(material);
  if (before !== undefined) return before;
  const table = tableOf(material);
  made.set(material, table);
  return table;
}

function tableOf(material: Material): MaterialTable {
  const { stepC, lowestC, size } = GRID;
  const heatSlope = new Float64Array(size);
  const conductivity = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const from = lowestC + i * stepC;
    let heat = meanOf(material.specificHeat, from, from + stepC);
    for (const reaction of material.reactions ?? []) {
      const shared = Math.max(0, Math.min(from + stepC, reaction.toC) - Math.max(from, reaction.fromC));
      heat += (reaction.joulesPerKg * shared) / (reaction.toC - reaction.fromC) / stepC;
    }
    heatSlope[i] = heat * material.densityKgPerM3;
    conductivity[i] = meanOf(material.conductivity, from, from + stepC);
  }
  return { enthalpy: summed(heatSlope), heatSlope, kirchhoff: summed(conductivity), conductivity };
}

/** A slope in each interval summed up to the value at each grid point, from 0. */
function summed(slope: Float64Array): Float64Array {
  const sum = new Float64Array(slope.length);
  for (let i = 1; i < slope.length; i++) sum[i] = (sum[i - 1] as number) + (slope[i - 1] as number) * GRID.stepC;
  return sum;
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

/** The mean of what `at` gives from one x to another: trapezia, cut at the points between. */
function meanOf(points: readonly (readonly [number, number])[], from: number, to: number): number {
  let area = 0;
  let x = from;
  let y = at(points, from);
  for (const [next] of points) {
    if (next <= x || next >= to) continue;
    const there = at(points, next);
    area += ((y + there) / 2) * (next - x);
    [x, y] = [next, there];
  }
  return (area + ((y + at(points, to)) / 2) * (to - x)) / (to - from);
}
