import { GRID } from "../materials/material.ts";
import type { FlatNetwork } from "./network.ts";

const WIDTH = 4;

/**
 * What each node holds and conducts at its present temperature. A node stands between two cells, which may be of two
 * materials; each side has its own conductivity integral (W/m) and conductivity (its slope, W/m·K).
 */
export class NodeProperties {
  /** Heat in the node, J for a square metre of its column, and its slope by temperature. */
  readonly content: Float64Array;
  readonly capacity: Float64Array;
  readonly lowKirchhoff: Float64Array;
  readonly lowConductivity: Float64Array;
  readonly highKirchhoff: Float64Array;
  readonly highConductivity: Float64Array;
  private readonly flat: FlatNetwork;
  /** All materials' tables in one, four values a temperature: enthalpy, its slope, conductivity integral, its slope. */
  private readonly table: Float64Array;

  constructor(flat: FlatNetwork) {
    this.flat = flat;
    this.content = new Float64Array(flat.nodes);
    this.capacity = new Float64Array(flat.nodes);
    this.lowKirchhoff = new Float64Array(flat.nodes);
    this.lowConductivity = new Float64Array(flat.nodes);
    this.highKirchhoff = new Float64Array(flat.nodes);
    this.highConductivity = new Float64Array(flat.nodes);
    this.table = new Float64Array(flat.tables.length * GRID.size * WIDTH);
    flat.tables.forEach((material, m) => {
      for (let i = 0; i < GRID.size; i++) {
        const at = (m * GRID.size + i) * WIDTH;
        this.table[at] = material.enthalpy[i] as number;
        this.table[at + 1] = material.heatSlope[i] as number;
        this.table[at + 2] = material.kirchhoff[i] as number;
        this.table[at + 3] = material.conductivity[i] as number;
      }
    });
  }

  /** Looks every node up at these temperatures, °C. */
  lookUp(tempC: Float64Array): void {
    const { content, capacity, lowKirchhoff, lowConductivity, highKirchhoff, highConductivity, table } = this;
    const { nodes, lowMaterial, lowMetres, highMaterial, highMetres } = this.flat;
    const { stepC, lowestC, size } = GRID;
    const perStep = 1 / stepC;
    const row = size * WIDTH;
    for (let i = 0; i < nodes; i++) {
      const place = ((tempC[i] as number) - lowestC) * perStep;
      const cell = place < 0 ? 0 : place >= size - 2 ? size - 2 : place | 0;
      const over = (tempC[i] as number) - (lowestC + cell * stepC);
      const material = lowMaterial[i] as number;
      const low = material * row + cell * WIDTH;
      const heatSlope = table[low + 1] as number;
      const held = (table[low] as number) + over * heatSlope;
      const k = table[low + 3] as number;
      const kirchhoff = (table[low + 2] as number) + over * k;
      lowKirchhoff[i] = kirchhoff;
      lowConductivity[i] = k;
      if (highMaterial[i] === material) {
        const metres = (lowMetres[i] as number) + (highMetres[i] as number);
        content[i] = metres * held;
        capacity[i] = metres * heatSlope;
        highKirchhoff[i] = kirchhoff;
        highConductivity[i] = k;
        continue;
      }
      const high = (highMaterial[i] as number) * row + cell * WIDTH;
      const highSlope = table[high + 1] as number;
      const highHeld = (table[high] as number) + over * highSlope;
      content[i] = (lowMetres[i] as number) * held + (highMetres[i] as number) * highHeld;
      capacity[i] = (lowMetres[i] as number) * heatSlope + (highMetres[i] as number) * highSlope;
      highConductivity[i] = table[high + 3] as number;
      highKirchhoff[i] = (table[high + 2] as number) + over * (highConductivity[i] as number);
    }
  }
}
