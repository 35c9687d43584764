import { BRICK_23 } from "../../src/firing/materials/materials.ts";
import { type Demand, HeatSolver } from "../../src/firing/thermal/heat-solver.ts";

/**
 * One 64 mm brick wall around one zone, heated as a firing heats it; the same at every number of nodes.
 *
 * @returns the zone's temperature at each quarter of an hour, at the same watts
 */
function heated(nodes: number): number[] {
  const solver = new HeatSolver(
    {
      columns: [
        {
          name: "wall",
          areaM2: 0.8,
          layers: [{ material: BRICK_23, thicknessM: 0.064, cells: nodes - 1 }],
          first: { kind: "zone", zone: 0, emissivity: 0.75 },
          second: { kind: "air", airC: 20, wattsPerM2K: 7, emissivity: 0.35 },
        },
        {
          name: "ware",
          areaM2: 1.2,
          layers: [{ material: BRICK_23, thicknessM: 0.02, cells: 10 }],
          first: { kind: "zone", zone: 0, emissivity: 0.85 },
          second: { kind: "none" },
        },
      ],
      zones: [{ name: "chamber", openAboveM2: 0, leakWattsPerK: 0.5, powerShare: 1 }],
      roomC: 20,
    },
    20,
  );
  const demand: Demand = { zone: 0, steer: false, wantedC: new Float64Array(2), watts: 0, mostWatts: 6000 };
  const found: number[] = [];
  const stepS = 30;
  for (let n = 0; n < (10 * 3600) / stepS; n++) {
    // Power climbs over eight hours, as a controlled ramp's does, then is off.
    demand.watts = n * stepS < 8 * 3600 ? 500 + (4000 * n * stepS) / (8 * 3600) : 0;
    solver.step(stepS, demand);
    if (((n + 1) * stepS) % 900 === 0) found.push(solver.zoneC(0));
  }
  return found;
}

/**
 * Worst error of the chamber's temperature at given watts, K, against 240 nodes: while heating, and in the two hours after
 * shut-off, when a coarse wall gives its heat back a little late.
 */
export function wallNodes(counts: readonly number[]): { nodes: number; heatingK: number; coolingK: number }[] {
  const fine = heated(241);
  const heatingRows = (8 * 3600) / 900;
  return counts.map((nodes) => {
    const errors = heated(nodes).map((each, i) => Math.abs(each - (fine[i] as number)));
    return {
      nodes,
      heatingK: Math.max(...errors.slice(0, heatingRows)),
      coolingK: Math.max(...errors.slice(heatingRows)),
    };
  });
}
