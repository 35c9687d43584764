import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { CONES } from "../../src/firing/cones/cone.ts";
import { CONE_TABLE } from "../../src/firing/cones/cone-table.ts";
import { CONE_KINETICS } from "../../src/firing/heat-work/cone-kinetics.ts";
import { coneWork, prepareCurve } from "../../src/firing/heat-work/cone-work.ts";
import { curveThrough } from "../../src/firing/heat-work/curve.ts";
import { GAS_CONSTANT } from "../../src/firing/heat-work/gas-constant.ts";
import { endPointC, lnScaledE2 } from "./exponential-integral.ts";
import { fitTable, leaveOneRateOut, pointsOf, rootMeanSquare } from "./fit.ts";
import { rampEndPointC, tableErrors } from "./table-errors.ts";

interface PrototypeRow {
  readonly cone: string;
  readonly E_kJ_mol: number;
  readonly lnA_per_s: number;
  readonly fit_err_C: Readonly<Record<string, number>>;
  readonly n_rates: number;
}
const prototype = JSON.parse(readFileSync(join(import.meta.dirname, "prototype-rows.json"), "utf8")) as {
  rows: PrototypeRow[];
};

test("the scaled exponential integral agrees with Abramowitz and Stegun", () => {
  // x·e^x·E1 = 0.915633 at x = 10 and 0.954371 at x = 20 (table 5.2, from memory); E2 = e^−x − x·E1 (5.1.14).
  expect(Math.exp(lnScaledE2(10))).toBeCloseTo(1 - 0.9156333394, 8);
  expect(Math.exp(lnScaledE2(20))).toBeCloseTo(1 - 0.9543709099, 8);
});

test("the fit agrees with an independent program's for every cone with three rates", () => {
  let [energy, lnA, error] = [0, 0, 0];
  fitTable().forEach((fit, place) => {
    const theirs = prototype.rows[place] as PrototypeRow;
    expect(fit.cone).toBe(theirs.cone);
    if (theirs.n_rates < 3) return;
    energy = Math.max(energy, Math.abs(fit.energyJPerMol / 1000 - theirs.E_kJ_mol));
    lnA = Math.max(lnA, Math.abs(fit.lnAPerSecond - theirs.lnA_per_s));
    ["15", "60", "150"].forEach((rate, i) => {
      error = Math.max(error, Math.abs((fit.errorC[i] as number) - (theirs.fit_err_C[rate] as number)));
    });
  });
  console.log(
    `fit against the independent one, worst: E ${energy.toFixed(3)} kJ/mol, ln A ${lnA.toFixed(4)}, error ${error.toFixed(3)} °C`,
  );
  expect(energy).toBeLessThan(0.1);
  expect(lnA).toBeLessThan(0.005);
  expect(error).toBeLessThan(0.01);
});

test("the stored kinetics are those the fit gives", () => {
  fitTable().forEach((fit, place) => {
    const stored = CONE_KINETICS[place] as (typeof CONE_KINETICS)[number];
    expect(stored.cone).toBe(fit.cone);
    expect(stored.borrowedFrom).toBe(fit.borrowedFrom);
    // E and ln A trade off along the fit's flat valley: compare what they predict.
    for (const rate of [15, 60, 150]) {
      const now = endPointC(fit.lnAPerSecond, fit.energyJPerMol / GAS_CONSTANT, rate);
      expect(endPointC(stored.lnAPerSecond, stored.energyJPerMol / GAS_CONSTANT, rate)).toBeCloseTo(now, 3);
    }
    expect(stored.fitErrorC.map((each) => each.toFixed(3))).toEqual(
      fit.errorC.map((each) => (Math.round(each * 1e6) / 1e6).toFixed(3)),
    );
  });
});

test("the published table comes out at its own rates within 0.1 °C", () => {
  const errors = tableErrors();
  const worst = Math.max(...errors.map(Math.abs));
  console.log(`published table, ${errors.length} values: worst error ${worst.toExponential(1)} °C`);
  expect(errors.length).toBe(CONE_TABLE.flatMap(pointsOf).length);
  expect(worst).toBeLessThanOrEqual(0.1);
});

test("the bare Arrhenius fit misses the table by 1.3 °C rms and 4 °C at most", () => {
  const errors = fitTable().flatMap((fit) => (fit.borrowedFrom === null ? fit.errorC : []));
  const worst = Math.max(...errors.map(Math.abs));
  console.log(
    `bare fit, ${errors.length} values: rms ${rootMeanSquare(errors).toFixed(2)} °C, worst ${worst.toFixed(2)} °C`,
  );
  expect(errors.length).toBe(35 * 3);
  expect(rootMeanSquare(errors)).toBeLessThanOrEqual(1.3);
  expect(worst).toBeLessThanOrEqual(4);
});

test("with an energy borrowed from cone 019, cones 022 to 020 stay within 6 °C at the published rates", () => {
  const errors = fitTable().flatMap((fit) => (fit.borrowedFrom === null ? [] : fit.errorC.slice(1)));
  const worst = Math.max(...errors.map(Math.abs));
  console.log(`borrowed energy, ${errors.length} values: worst ${worst.toFixed(2)} °C`);
  expect(worst).toBeLessThanOrEqual(6);
});

test.each([
  [15, 7],
  [60, 3],
  [150, 5],
])("left out of the fit, the end points at %i °C/h are predicted within %i °C rms", (rate, boundC) => {
  const errors = leaveOneRateOut().get(rate) as number[];
  const worst = Math.max(...errors.map(Math.abs));
  console.log(`leave ${rate} °C/h out: rms ${rootMeanSquare(errors).toFixed(2)} °C, worst ${worst.toFixed(2)} °C`);
  expect(rootMeanSquare(errors)).toBeLessThanOrEqual(boundC);
});

test("a bare cone's integral over a log agrees with the closed form to a millionth, whatever the step", () => {
  let worst = 0;
  for (const kinetics of CONE_KINETICS) {
    const bare = { ...kinetics, fitErrorC: [0, 0, 0] as const };
    for (const rate of [15, 60, 150, 400]) {
      const endC = endPointC(kinetics.lnAPerSecond, kinetics.energyJPerMol / GAS_CONSTANT, rate);
      for (const steps of [1, 30, 300, 20_000]) {
        const hours = (endC - 20) / rate;
        const corners = Array.from(
          { length: steps + 1 },
          (_, n) => [(n / steps) * hours * 60, 20 + (n / steps) * (endC - 20)] as const,
        );
        worst = Math.max(worst, Math.abs(coneWork(bare, prepareCurve(curveThrough(corners))).work - 1));
      }
    }
  }
  console.log(`work of a ramp against T·E2(E/RT): worst relative error ${worst.toExponential(1)}`);
  expect(worst).toBeLessThan(1e-6);
});

test("between the published rates cones keep their order and end hotter when heated faster", () => {
  let before: number[] = [];
  for (let rate = 15; rate <= 150; rate += 7.5) {
    const ends = CONES.slice(3).map((cone) => rampEndPointC(cone, rate));
    for (let i = 1; i < ends.length; i++) expect(ends[i]).toBeGreaterThan(ends[i - 1] as number);
    ends.forEach((end, i) => {
      if (before.length > 0) expect(end).toBeGreaterThan(before[i] as number);
    });
    before = ends;
  }
});
