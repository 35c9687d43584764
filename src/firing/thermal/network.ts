import { type Material, type MaterialTable, materialTable } from "../materials/material.ts";

/** What a column's end faces. */
export type Face =
  | { readonly kind: "zone"; readonly zone: number; readonly emissivity: number }
  | { readonly kind: "air"; readonly airC: number; readonly wattsPerM2K: number; readonly emissivity: number }
  | { readonly kind: "fixed"; readonly tempC: number }
  | { readonly kind: "flux"; readonly wattsPerM2: number }
  | { readonly kind: "none" };

/** One layer of a column, divided evenly unless its cells grow by a factor from the first end. */
export interface Layer {
  readonly material: Material;
  readonly thicknessM: number;
  readonly cells: number;
  /** Each cell this many times as thick as the one before it; 1 for even cells. */
  readonly growth?: number;
}

/** A slab with heat running through its thickness: a wall, a shelf, ware. Layers from the first face to the second. */
export interface Column {
  readonly name: string;
  readonly areaM2: number;
  readonly layers: readonly Layer[];
  readonly first: Face;
  readonly second: Face;
}

/** A zone: the air and surfaces of one level, as one node of radiation. */
export interface Zone {
  readonly name: string;
  /** Area through which it sees the zone above, m². */
  readonly openAboveM2: number;
  /** Watts lost for each degree its air is above the room: vent and cracks. */
  readonly leakWattsPerK: number;
  /** Share of the kiln's power that its elements give. */
  readonly powerShare: number;
}

/** Columns and zones as one thing to solve. */
export interface Network {
  readonly columns: readonly Column[];
  readonly zones: readonly Zone[];
  readonly roomC: number;
}

/** The network flattened: a node at each face and between cells; half a cell of heat on either side of a node. */
export interface FlatNetwork {
  readonly nodes: number;
  readonly start: Int32Array;
  readonly area: Float64Array;
  readonly tables: readonly MaterialTable[];
  /** Material and metres of it on the low side and the high side of each node. */
  readonly lowMaterial: Int32Array;
  readonly lowMetres: Float64Array;
  readonly highMaterial: Int32Array;
  readonly highMetres: Float64Array;
  /** The cell from node i to node i + 1: its material and thickness. */
  readonly cellMaterial: Int32Array;
  readonly cellMetres: Float64Array;
  /** For each material, what it is once fired above a temperature, or -1; and that temperature. */
  readonly firedAs: Int32Array;
  readonly firedAboveC: Float64Array;
}

export function flatten(network: Network): FlatNetwork {
  const materials: Material[] = [];
  const start = new Int32Array(network.columns.length + 1);
  const cellsOf = network.columns.map((column) => cells(column, materials));
  cellsOf.forEach((each, c) => {
    start[c + 1] = (start[c] as number) + each.length + 1;
  });
  const nodes = start[network.columns.length] as number;
  const flat = {
    lowMaterial: new Int32Array(nodes),
    lowMetres: new Float64Array(nodes),
    highMaterial: new Int32Array(nodes),
    highMetres: new Float64Array(nodes),
    cellMaterial: new Int32Array(nodes),
    cellMetres: new Float64Array(nodes),
  };
  cellsOf.forEach((each, c) => {
    each.forEach((cell, i) => {
      const node = (start[c] as number) + i;
      flat.cellMaterial[node] = cell.material;
      flat.cellMetres[node] = cell.metres;
      flat.highMaterial[node] = cell.material;
      flat.highMetres[node] = cell.metres / 2;
      flat.lowMaterial[node + 1] = cell.material;
      flat.lowMetres[node + 1] = cell.metres / 2;
      if (i === 0) flat.lowMaterial[node] = cell.material;
      if (i === each.length - 1) flat.highMaterial[node + 1] = cell.material;
    });
  });
  return {
    nodes,
    start,
    area: Float64Array.from(network.columns, (column) => column.areaM2),
    tables: materials.map(materialTable),
    firedAs: Int32Array.from(materials, (each) => (each.fired ? materials.indexOf(each.fired.as) : -1)),
    firedAboveC: Float64Array.from(materials, (each) => each.fired?.aboveC ?? Number.POSITIVE_INFINITY),
    ...flat,
  };
}

function cells(column: Column, materials: Material[]): { material: number; metres: number }[] {
  return column.layers.flatMap((layer) => {
    for (const each of [layer.material, layer.material.fired?.as]) {
      if (each && !materials.includes(each)) materials.push(each);
    }
    const material = materials.indexOf(layer.material);
    const growth = layer.growth ?? 1;
    const sizes = Array.from({ length: layer.cells }, (_, i) => growth ** i);
    const whole = sizes.reduce((sum, size) => sum + size, 0);
    return sizes.map((size) => ({ material, metres: (layer.thicknessM * size) / whole }));
  });
}
