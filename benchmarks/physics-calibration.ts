// The calibration part of docs/physics.md: kilns drawn by chance, hidden, logged with errors, and found again.
// Run: node benchmarks/physics-calibration.ts

import { type Recovery, recover, worstOf } from "../src/firing/calibration/testing/recovery.ts";
import type { PhysicsCheck } from "./physics-heat-work.ts";

const KILNS = 16;

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);

/** Figures of one set of kilns. Targets: firing.md's. */
function recoveryChecks(what: string, kilns: readonly Recovery[]): PhysicsCheck[] {
  const kWh = kilns.map((each) => each.kWhPercent);
  const shelves = kilns.flatMap((each) => each.shelvesC);
  const cooling = kilns.map((each) => each.coolPercent);
  const off = kilns.flatMap((each) => Object.values(each.offInSigmas));
  const within = shelves.filter((each) => Math.abs(each) <= 5).length;
  return [
    {
      check: `${what}: energy of a firing not seen`,
      target: "± 5 %",
      found: `worst ${worstOf(kWh).toFixed(1)} %, ${rootMeanSquare(kWh).toFixed(1)} % rms`,
      met: worstOf(kWh) <= 5,
    },
    {
      check: `${what}: heat work of its shelves`,
      target: "± 5 °C",
      found: `worst ${worstOf(shelves).toFixed(1)} °C, ${rootMeanSquare(shelves).toFixed(1)} °C rms, ${within} of ${shelves.length} shelves within`,
      met: worstOf(shelves) <= 5,
    },
    {
      check: `${what}: hours to cool to 95 °C`,
      target: "± 10 %",
      found: `worst ${worstOf(cooling).toFixed(1)} %, ${rootMeanSquare(cooling).toFixed(1)} % rms`,
      met: worstOf(cooling) <= 10,
    },
    {
      check: `${what}: hidden values against the stated uncertainty`,
      target: "≤ 3 sigma, about 1 rms",
      found: `worst ${worstOf(off).toFixed(1)} sigma, ${rootMeanSquare(off).toFixed(2)} rms`,
      met: worstOf(off) <= 3,
    },
  ];
}

/** Every row of the calibration part of the validation report. */
export function calibrationReport(): PhysicsCheck[] {
  const seeds = Array.from({ length: KILNS }, (_, i) => i + 1);
  return [
    ...recoveryChecks(
      `${KILNS} hidden kilns, three firings logged`,
      seeds.map((seed) => recover(seed)),
    ),
    ...recoveryChecks(
      `${KILNS} hidden kilns, one firing logged`,
      seeds.map((seed) => recover(seed, 1)),
    ),
  ];
}

if (process.argv[1] === import.meta.filename) {
  for (const { check, target, found, met } of calibrationReport()) {
    console.log(`${met ? "met   " : "missed"}  ${check}: ${found} (target ${target})`);
  }
}
