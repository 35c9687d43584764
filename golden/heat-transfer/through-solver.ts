// Handbook problems put to the very solver that the kiln uses.
import type { Material } from "../../src/firing/materials/material.ts";
import { type Demand, HeatSolver } from "../../src/firing/thermal/heat-solver.ts";
import type { Column, Face, Layer, Zone } from "../../src/firing/thermal/network.ts";

/** A material of the same k and ρc at any temperature. */
export function steadyMaterial(conductivity: number, heatPerM3: number): Material {
  return {
    name: "handbook",
    source: "the example",
    validC: [-100, 1600],
    densityKgPerM3: 1000,
    conductivity: [[0, conductivity]],
    specificHeat: [[0, heatPerM3 / 1000]],
  };
}

export const column = (layers: readonly Layer[], first: Face, second: Face): Column => ({
  name: "slab",
  areaM2: 1,
  layers,
  first,
  second,
});

export const evenLayer = (material: Material, thicknessM: number, cells: number): Layer => ({
  material,
  thicknessM,
  cells,
});

const nothing: Demand = { zone: 0, steer: false, wantedC: new Float64Array(2), watts: 0, mostWatts: 0 };

/**
 * The columns after a time, in steps that grow as the square: a jump at the start wants short ones.
 */
export function after(seconds: number, startC: number, columns: readonly Column[], steps = 1000): HeatSolver {
  const solver = new HeatSolver({ columns, zones: [], roomC: 20 }, startC);
  let from = 0;
  for (let n = 1; n <= steps; n++) {
    const to = seconds * (n / steps) ** 2;
    solver.step(to - from, nothing);
    from = to;
  }
  return solver;
}

/** The columns and zones when nothing changes any more. */
export function settled(startC: number, columns: readonly Column[], zones: readonly Zone[] = []): HeatSolver {
  const solver = new HeatSolver({ columns, zones, roomC: 20 }, startC);
  for (let n = 0; n < 60; n++) solver.step(10 ** (n / 6), nothing);
  return solver;
}
