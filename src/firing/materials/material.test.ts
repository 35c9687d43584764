import fc from "fast-check";
import { expect, test } from "vitest";
import { at, GRID, type Material, materialTable } from "./material.ts";
import { BRICK_23, BRICK_26, CORDIERITE, FIBRE, greenware, STONEWARE } from "./materials.ts";
import { outsideRange } from "./outside-range.ts";

const ALL = [BRICK_23, BRICK_26, FIBRE, CORDIERITE, STONEWARE, greenware(0.01), greenware(0.2)];

/** A look-up as the solver makes it: the value at the grid point beneath, and on by its slope. */
function lookedUp(values: Float64Array, slopes: Float64Array, tempC: number): number {
  const cell = Math.floor((tempC - GRID.lowestC) / GRID.stepC);
  return (values[cell] as number) + (tempC - GRID.lowestC - cell * GRID.stepC) * (slopes[cell] as number);
}

/** ∫ from the grid's lowest temperature by the midpoint rule in steps of 0.05 °C: independent of how the tables are made. */
function integral(slope: (tempC: number) => number, toC: number): number {
  const steps = Math.round((toC - GRID.lowestC) / 0.05);
  const width = (toC - GRID.lowestC) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += slope(GRID.lowestC + (i + 0.5) * width);
  return sum * width;
}

const heatAt =
  (material: Material) =>
  (tempC: number): number => {
    const reacting = (material.reactions ?? []).reduce(
      (sum, { fromC, toC, joulesPerKg }) => sum + (tempC >= fromC && tempC < toC ? joulesPerKg / (toC - fromC) : 0),
      0,
    );
    return material.densityKgPerM3 * (at(material.specificHeat, tempC) + reacting);
  };

test("what the solver looks up is the integral of specific heat and of conductivity, to a hundredth of a degree", () => {
  let worstC = 0;
  fc.assert(
    fc.property(fc.constantFrom(...ALL), fc.double({ min: -99, max: 1590, noNaN: true }), (material, tempC) => {
      const table = materialTable(material);
      const cell = Math.floor((tempC - GRID.lowestC) / GRID.stepC);
      const heat = lookedUp(table.enthalpy, table.heatSlope, tempC) - integral(heatAt(material), tempC);
      const flow =
        lookedUp(table.kirchhoff, table.conductivity, tempC) -
        integral((each) => at(material.conductivity, each), tempC);
      // How far off the temperature is that the looked-up value stands for.
      const missedC = Math.max(
        Math.abs(heat / (table.heatSlope[cell] as number)),
        Math.abs(flow / (table.conductivity[cell] as number)),
      );
      worstC = Math.max(worstC, missedC);
      // Within one interval of 2 °C where quartz begins or ends, a straight line passes the corner by up to 0.04 °C.
      const corner = material.reactions !== undefined && [564, 580].includes(GRID.lowestC + cell * GRID.stepC);
      return missedC < (corner ? 0.07 : 0.01);
    }),
    { numRuns: 200, seed: 3 },
  );
  console.log(`tables against midpoint quadrature: worst ${worstC.toFixed(4)} °C`);
});

test("tables join without a step, so that heat neither appears nor vanishes between intervals", () => {
  for (const material of ALL) {
    const { enthalpy, heatSlope, kirchhoff, conductivity } = materialTable(material);
    for (let i = 0; i + 1 < GRID.size; i++) {
      const heat = (enthalpy[i] as number) + GRID.stepC * (heatSlope[i] as number);
      const flow = (kirchhoff[i] as number) + GRID.stepC * (conductivity[i] as number);
      expect(Math.abs(heat - (enthalpy[i + 1] as number))).toBeLessThanOrEqual(1e-12 * heat);
      expect(Math.abs(flow - (kirchhoff[i + 1] as number))).toBeLessThanOrEqual(1e-12 * flow);
      expect(heatSlope[i]).toBeGreaterThan(0);
      expect(conductivity[i]).toBeGreaterThan(0);
    }
  }
});

test("greenware takes up the heat of drying, of its chemical water and of quartz, beyond a fired body's", () => {
  const [dry, wet] = [greenware(0), greenware(0.1)].map((each) => {
    const table = materialTable(each);
    return (fromC: number, toC: number): number =>
      (lookedUp(table.enthalpy, table.heatSlope, toC) - lookedUp(table.enthalpy, table.heatSlope, fromC)) /
      each.densityKgPerM3;
  }) as [(a: number, b: number) => number, (a: number, b: number) => number];
  // 2.26 MJ/kg: heat of evaporation of water at 100 °C, steam tables (2.257, from memory).
  expect(wet(20, 200) - dry(20, 200)).toBeCloseTo(0.1 * 2.26e6, 3);
  const fired = materialTable(STONEWARE);
  const plain =
    (lookedUp(fired.enthalpy, fired.heatSlope, 700) - lookedUp(fired.enthalpy, fired.heatSlope, 400)) /
    STONEWARE.densityKgPerM3;
  expect(dry(400, 700) - plain).toBeCloseTo(0.5 * 550e3 + 0.25 * 10e3, 3);
});

test("a material used beyond its data says so, and is quiet within", () => {
  expect(outsideRange(BRICK_23, 1222)).toBeNull();
  expect(outsideRange(BRICK_23, 1260)).toBeNull();
  const beyond = outsideRange(BRICK_23, 1300);
  expect(beyond?.validC).toEqual([0, 1260]);
  expect(beyond?.message).toContain("1300 °C is above");
  expect(outsideRange(STONEWARE, 20)?.message).toContain("below");
});

test("every row's data are in order, within its own range and the solver's grid", () => {
  for (const material of ALL) {
    const [low, high] = material.validC;
    expect(low).toBeGreaterThanOrEqual(GRID.lowestC);
    expect(high).toBeLessThanOrEqual(GRID.lowestC + (GRID.size - 2) * GRID.stepC);
    expect(material.source.length).toBeGreaterThan(10);
    for (const points of [material.conductivity, material.specificHeat]) {
      points.forEach(([tempC, value], i) => {
        expect(value).toBeGreaterThan(0);
        if (i > 0) expect(tempC).toBeGreaterThan((points[i - 1] as readonly [number, number])[0]);
      });
    }
  }
});
