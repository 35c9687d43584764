// Heat work of all cones over a log of 100,000 readings: target 30 ms of processor time on one core.
// Yardsticks in the same run: the same integral written plainly (one object a reading, one exponential a cone and
// reading, trapezoid), and the general-purpose integrator odex on the same equations.
// Run: node benchmarks/heat-work.ts

import { createRequire } from "node:module";
import { CONE_KINETICS } from "../src/firing/heat-work/cone-kinetics.ts";
import type { Curve } from "../src/firing/heat-work/curve.ts";
import { GAS_CONSTANT } from "../src/firing/heat-work/gas-constant.ts";
import { heatWork } from "../src/firing/heat-work/heat-work.ts";
import { seededChance } from "../src/measures/seeded-chance.ts";

/** The part of odex used here; the package's own types are program text that our compiler settings refuse. */
interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    slope: (at: number, values: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly nEval: number; readonly outcome: number };
}
const { Solver } = createRequire(import.meta.url)("odex") as { Solver: new (unknowns: number) => OdexSolver };

const READINGS = 100_000;

/** A glaze firing to cone 6 with a hold and 11 h of cooling, read often, with half a degree of noise. */
export function syntheticLog(readings = READINGS, seed = 1): Curve {
  const corners = [
    [0, 20],
    [80, 120],
    [400, 1100],
    [530, 1222],
    [545, 1222],
    [800, 900],
    [1400, 60],
  ] as const;
  const chance = seededChance(seed);
  const minutes = new Float64Array(readings);
  const tempC = new Float64Array(readings);
  let leg = 1;
  for (let n = 0; n < readings; n++) {
    const minute = (n / (readings - 1)) * 1400;
    while (minute > (corners[leg]?.[0] ?? 0)) leg++;
    const [from, to] = [corners[leg - 1] ?? corners[0], corners[leg] ?? corners[0]];
    minutes[n] = minute;
    tempC[n] = from[1] + ((minute - from[0]) / (to[0] - from[0] || 1)) * (to[1] - from[1]) + chance.next() - 0.5;
  }
  return { minutes, tempC };
}

/** The plain way: an object a reading, every cone at every reading, no correction for the rate. */
function plainWork(log: Curve): Record<string, number> {
  const readings = Array.from(log.minutes, (minute, n) => ({
    seconds: minute * 60,
    kelvin: (log.tempC[n] as number) + 273.15,
  }));
  const work: Record<string, number> = {};
  for (const cone of CONE_KINETICS) {
    const speed = (kelvin: number): number =>
      Math.exp(cone.lnAPerSecond - cone.energyJPerMol / (GAS_CONSTANT * kelvin));
    work[cone.cone] = readings.slice(1).reduce((sum, reading, n) => {
      const before = readings[n] as (typeof readings)[number];
      return sum + ((reading.seconds - before.seconds) * (speed(reading.kelvin) + speed(before.kelvin))) / 2;
    }, 0);
  }
  return work;
}

/** odex (order 8 to 10 extrapolation) on the same equations, temperature read off the log by straight lines. */
function generalIntegrator(log: Curve, tolerance: number): number {
  const cones = CONE_KINETICS.slice(-12);
  const last = log.minutes.length - 1;
  const spacing = (log.minutes[last] as number) / last;
  const slope = (minute: number): number[] => {
    const place = Math.min(last - 1, Math.max(0, Math.floor(minute / spacing)));
    const share = minute / spacing - place;
    const kelvin = (log.tempC[place] as number) * (1 - share) + (log.tempC[place + 1] as number) * share + 273.15;
    return cones.map((cone) => 60 * Math.exp(cone.lnAPerSecond - cone.energyJPerMol / (GAS_CONSTANT * kelvin)));
  };
  const solver = new Solver(cones.length);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.maxSteps = 1e7;
  const solved = solver.solve(slope, 0, new Array<number>(cones.length).fill(0), log.minutes[last] as number);
  return solved.y[cones.findIndex((cone) => cone.cone === "6")] as number;
}

/** Median of the processor time of several runs, ms. */
function processorMs(run: () => unknown, times: number): number {
  run();
  const each = Array.from({ length: times }, () => {
    const before = process.cpuUsage();
    run();
    const used = process.cpuUsage(before);
    return (used.user + used.system) / 1000;
  }).sort((a, b) => a - b);
  return each[Math.floor(times / 2)] as number;
}

export interface HeatWorkTiming {
  readonly readings: number;
  readonly oursMs: number;
  readonly plainMs: number;
  readonly timesFaster: number;
}

export function heatWorkTiming(): HeatWorkTiming {
  const log = syntheticLog();
  const oursMs = processorMs(() => heatWork(log), 15);
  const plainMs = processorMs(() => plainWork(log), 5);
  return { readings: READINGS, oursMs, plainMs, timesFaster: plainMs / oursMs };
}

if (process.argv[1] === import.meta.filename) {
  const timing = heatWorkTiming();
  console.log(
    `heat work of ${CONE_KINETICS.length} cones, ${timing.readings} readings (target 30 ms of processor time)`,
  );
  console.log(`  Wareboard                       ${timing.oursMs.toFixed(1)} ms`);
  console.log(
    `  plain objects and exponentials  ${timing.plainMs.toFixed(1)} ms   ${timing.timesFaster.toFixed(1)} times slower`,
  );
  const log = syntheticLog();
  const exact = plainWork(log)["6"] as number;
  for (const tolerance of [1e-4, 1e-7]) {
    let found = 0;
    const odexMs = processorMs(() => {
      found = generalIntegrator(log, tolerance);
    }, 1);
    const missed = (Math.abs(found / exact - 1) * 100).toPrecision(1);
    console.log(
      `  odex, 12 cones, tolerance ${tolerance.toExponential(0)}  ${odexMs.toFixed(1)} ms   ${(odexMs / timing.oursMs).toFixed(1)} times ours, cone 6 ${missed} % off`,
    );
  }
}
