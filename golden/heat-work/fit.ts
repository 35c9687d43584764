// Fits ln A and E of every cone to the published table, and writes src/firing/heat-work/cone-kinetics.ts.
// Run: node golden/heat-work/fit.ts. The test beside it fits again and compares with what is stored.

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { CONE_TABLE, type ConeRow } from "../../src/firing/cones/cone-table.ts";
import { GAS_CONSTANT } from "../../src/firing/heat-work/gas-constant.ts";
import { endPointC } from "./exponential-integral.ts";

export interface Fit {
  readonly cone: string;
  readonly energyJPerMol: number;
  readonly lnAPerSecond: number;
  /** Model minus table, °C, at 15, 60 and 150 °C/h; where no value is published, the neighbour's. */
  readonly errorC: readonly [number, number, number];
  readonly borrowedFrom: string | null;
}

type Point = readonly [cPerHour: number, tempC: number];

/** The published points of a row. */
export const pointsOf = (row: ConeRow): Point[] => [
  ...(row.at15C === null ? [] : [[15, row.at15C] as const]),
  [60, row.at60C] as const,
  [150, row.at150C] as const,
];

/** For a given E, the ln A whose end points miss the table's by nothing on average. */
function bestLnA(thetaK: number, points: readonly Point[]): number {
  let lnA = thetaK / ((points[0] as Point)[1] + 273.15) - 8;
  for (let i = 0; i < 100; i++) {
    const miss = average(points.map(([rate, tempC]) => endPointC(lnA, thetaK, rate) - tempC));
    const slope =
      (average(points.map(([rate]) => endPointC(lnA + 1e-4, thetaK, rate))) -
        average(points.map(([rate]) => endPointC(lnA, thetaK, rate)))) /
      1e-4;
    lnA -= miss / slope;
    if (Math.abs(miss) < 1e-11) break;
  }
  return lnA;
}

const average = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

/** Least squares in °C over both parameters; the one-dimensional search over ln E is by golden section. */
export function fitArrhenius(points: readonly Point[]): { thetaK: number; lnA: number } {
  const missAt = (lnTheta: number): number => {
    const thetaK = Math.exp(lnTheta);
    const lnA = bestLnA(thetaK, points);
    return points.reduce((sum, [rate, tempC]) => sum + (endPointC(lnA, thetaK, rate) - tempC) ** 2, 0);
  };
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = Math.log(8_000);
  let high = Math.log(400_000);
  while (high - low > 1e-9) {
    const [left, right] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (missAt(left) < missAt(right)) high = right;
    else low = left;
  }
  const thetaK = Math.exp((low + high) / 2);
  return { thetaK, lnA: bestLnA(thetaK, points) };
}

/** Cones without a value at 15 °C/h have too little data for an E of their own: they take that of cone 019. */
const LENDER = "019";

export function fitTable(): Fit[] {
  const lender = CONE_TABLE.find((row) => row.cone === LENDER) as ConeRow;
  const lent = fitArrhenius(pointsOf(lender)).thetaK;
  return CONE_TABLE.map((row) => {
    const points = pointsOf(row);
    const borrowed = row.at15C === null;
    const { thetaK, lnA } = borrowed ? { thetaK: lent, lnA: bestLnA(lent, points) } : fitArrhenius(points);
    const miss = (rate: number, tempC: number): number => endPointC(lnA, thetaK, rate) - tempC;
    const at60 = miss(60, row.at60C);
    return {
      cone: row.cone,
      energyJPerMol: thetaK * GAS_CONSTANT,
      lnAPerSecond: lnA,
      errorC: [row.at15C === null ? at60 : miss(15, row.at15C), at60, miss(150, row.at150C)],
      borrowedFrom: borrowed ? LENDER : null,
    };
  });
}

/** Errors of predicting one rate's end point from the other two, °C by rate, over the cones with three rates. */
export function leaveOneRateOut(): Map<number, number[]> {
  const errors = new Map<number, number[]>([15, 60, 150].map((rate) => [rate, []]));
  for (const row of CONE_TABLE) {
    const points = pointsOf(row);
    if (points.length < 3) continue;
    for (const [rate, tempC] of points) {
      const { thetaK, lnA } = fitArrhenius(points.filter(([other]) => other !== rate));
      errors.get(rate)?.push(endPointC(lnA, thetaK, rate) - tempC);
    }
  }
  return errors;
}

export const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(average(values.map((each) => each * each)));

function typescript(fits: readonly Fit[]): string {
  const number = (value: number, digits: number): string => value.toPrecision(digits).replace("+", "");
  const rows = fits.map((fit) => {
    const errors = fit.errorC.map((each) => Number(each.toFixed(6))).join(", ");
    const lender = fit.borrowedFrom === null ? "null" : `"${fit.borrowedFrom}"`;
    return `  row("${fit.cone}", ${number(fit.energyJPerMol, 12)}, ${number(fit.lnAPerSecond, 14)}, [${errors}], ${lender}),`;
  });
  return `import type { ConeName } from "../cones/cone.ts";

// Written by golden/heat-work/fit.ts: change that, not this.

/** How fast heat wears a cone down: its share of work a second is A·exp(−E/RT). */
export interface ConeKinetics {
  readonly cone: ConeName;
  /** E, J/mol. */
  readonly energyJPerMol: number;
  /** ln A, A in 1/s. */
  readonly lnAPerSecond: number;
  /** By how many °C the bare fit misses the published table at 15, 60 and 150 °C/h; added back when work is counted. */
  readonly fitErrorC: readonly [at15: number, at60: number, at150: number];
  /** The cone whose E this one takes, where its own data are too few. */
  readonly borrowedFrom: ConeName | null;
}

const row = (
  cone: ConeName,
  energyJPerMol: number,
  lnAPerSecond: number,
  fitErrorC: readonly [number, number, number],
  borrowedFrom: ConeName | null,
): ConeKinetics => ({ cone, energyJPerMol, lnAPerSecond, fitErrorC, borrowedFrom });

/**
 * Least squares in °C to the published end points of src/firing/cones/cone-table.ts, coolest cone first. Range of the
 * data: steady heating at 15 to 150 °C/h over the last 100 °C.
 */
export const CONE_KINETICS: readonly ConeKinetics[] = [
${rows.join("\n")}
];
`;
}

if (process.argv[1] === import.meta.filename) {
  const file = join(import.meta.dirname, "../../src/firing/heat-work/cone-kinetics.ts");
  writeFileSync(file, typescript(fitTable()));
  console.log(`wrote ${file}`);
}
