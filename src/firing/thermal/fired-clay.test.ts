import { expect, test } from "vitest";
import { greenware, STONEWARE } from "../materials/materials.ts";
import { HeatSolver } from "./heat-solver.ts";
import type { Network } from "./network.ts";

const WATER = 0.05;
/** A slab of raw clay, 10 kg on a square metre, in air whose temperature is the test's to choose. */
const slab = (airC: number, material = greenware(WATER)): Network => ({
  roomC: 20,
  zones: [],
  columns: [
    {
      name: "ware",
      areaM2: 1,
      layers: [{ material, thicknessM: 10 / material.densityKgPerM3, cells: 2 }],
      first: { kind: "air", airC, wattsPerM2K: 200, emissivity: 0 },
      second: { kind: "none" },
    },
  ],
});
const demand = { zone: 0, steer: false, wantedC: new Float64Array(2), watts: 0, mostWatts: 0 };

function heated(toC: number): HeatSolver {
  const solver = new HeatSolver(slab(toC), 20);
  for (let i = 0; i < 4000; i++) solver.step(10, demand);
  return solver;
}

test("water driven off does not come back: what clay keeps for good is its drying and its chemical water", () => {
  const solver = heated(900);
  const held = solver.heldJ();
  const before = [...solver.heat];
  solver.settleFired();
  // Nothing is lost to the balance, and the clay holds less by 10 kg of both waters: 2.26 MJ/kg (steam tables) and
  // 0.5 × 550 kJ/kg (kaolinite, from memory), no more.
  expect(Math.abs(solver.heldJ() / held - 1)).toBeLessThan(1e-12);
  const kept = before.reduce((sum, each) => sum + each, 0) - solver.heat.reduce((sum, each) => sum + each, 0);
  expect(kept).toBeCloseTo(10 * (WATER * 2.26e6 + 0.5 * 550e3), 0);
});

test("clay not yet fired right through keeps its water", () => {
  const solver = heated(600);
  const before = [...solver.heat];
  solver.settleFired();
  expect([...solver.heat]).toEqual(before);
});

test("ware that was fired before is left as it is", () => {
  const solver = new HeatSolver(slab(900, STONEWARE), 900);
  const before = [...solver.heat];
  solver.settleFired();
  expect([...solver.heat]).toEqual(before);
});
