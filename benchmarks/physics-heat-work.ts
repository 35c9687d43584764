// The heat-work half of docs/physics.md: every claim of it, what was aimed at and what is found, computed anew.
// Run: node benchmarks/physics-heat-work.ts

import { endPointC } from "../golden/heat-work/exponential-integral.ts";
import { fitTable, leaveOneRateOut, rootMeanSquare } from "../golden/heat-work/fit.ts";
import { tableErrors } from "../golden/heat-work/table-errors.ts";
import { bendDeg } from "../src/firing/heat-work/bend.ts";
import { CONE_KINETICS } from "../src/firing/heat-work/cone-kinetics.ts";
import { coneWork, prepareCurve } from "../src/firing/heat-work/cone-work.ts";
import { type Curve, curveThrough } from "../src/firing/heat-work/curve.ts";
import { GAS_CONSTANT } from "../src/firing/heat-work/gas-constant.ts";
import { degreesOfHold, holdToDrop, peakToDrop, workOf } from "../src/firing/heat-work/questions.ts";
import { programmeHours } from "../src/firing/programme/ideal-curve.ts";
import { writeProgramme } from "../src/firing/programme/write-programme.ts";
import { SHIELDED_LENGTH_M, safeRate } from "../src/firing/stress/safe-rate.ts";
import { heatWorkTiming } from "./heat-work.ts";

export interface PhysicsCheck {
  readonly check: string;
  readonly target: string;
  readonly found: string;
  readonly met: boolean;
}

const worstOf = (errors: readonly number[]): number => Math.max(...errors.map(Math.abs));

function tableChecks(): PhysicsCheck[] {
  const table = tableErrors();
  const bare = fitTable().flatMap((fit) => (fit.borrowedFrom === null ? fit.errorC : []));
  const borrowed = fitTable().flatMap((fit) => (fit.borrowedFrom === null ? [] : fit.errorC.slice(1)));
  const rows: PhysicsCheck[] = [
    {
      check: `published cone table at its own rates, ${table.length} values`,
      target: "≤ 0.1 °C",
      found: `worst ${worstOf(table).toFixed(4)} °C`,
      met: worstOf(table) <= 0.1,
    },
    {
      check: "bare Arrhenius fit, 35 cones of three published rates",
      target: "≤ 1.3 °C rms, ≤ 4 °C worst",
      found: `${rootMeanSquare(bare).toFixed(2)} °C rms, worst ${worstOf(bare).toFixed(2)} °C`,
      met: rootMeanSquare(bare) <= 1.3 && worstOf(bare) <= 4,
    },
    {
      check: "bare fit of cones 022 to 020, energy borrowed from cone 019",
      target: "none set",
      found: `worst ${worstOf(borrowed).toFixed(2)} °C`,
      met: true,
    },
  ];
  const bounds = new Map([
    [15, 7],
    [60, 3],
    [150, 5],
  ]);
  for (const [rate, errors] of leaveOneRateOut()) {
    const bound = bounds.get(rate) as number;
    rows.push({
      check: `leave one rate out, ${rate} °C/h`,
      target: `≤ ${bound} °C rms`,
      found: `${rootMeanSquare(errors).toFixed(2)} °C rms, worst ${worstOf(errors).toFixed(1)} °C`,
      met: rootMeanSquare(errors) <= bound,
    });
  }
  return rows;
}

function quadratureCheck(): PhysicsCheck {
  const errors = CONE_KINETICS.flatMap((kinetics) =>
    [15, 60, 150, 400].map((rate) => {
      const endC = endPointC(kinetics.lnAPerSecond, kinetics.energyJPerMol / GAS_CONSTANT, rate);
      const ramp = curveThrough([
        [0, 20],
        [((endC - 20) / rate) * 60, endC],
      ]);
      return coneWork({ ...kinetics, fitErrorC: [0, 0, 0] }, prepareCurve(ramp)).work - 1;
    }),
  );
  return {
    check: "work of a steady ramp against the exponential integral",
    target: "≤ 1e-6 relative",
    found: `worst ${worstOf(errors).toExponential(1)}`,
    met: worstOf(errors) <= 1e-6,
  };
}

function programmeChecks(): PhysicsCheck[] {
  const hours = (pace: "slow" | "medium"): number =>
    programmeHours(writeProgramme({ cone: "04", kind: "bisque", pace }).programme).heating;
  const [slow, medium] = [hours("slow"), hours("medium")];
  return [
    {
      check: "written bisque to cone 04 against a trade schedule page, slow and medium",
      target: "12–15 h and 9–12 h",
      found: `${slow.toFixed(1)} h and ${medium.toFixed(1)} h`,
      met: slow >= 12 && slow <= 15 && medium >= 9 && medium <= 12,
    },
    {
      check: "natural cooling's share of cone 6 at 60 °C/h, in degrees of peak",
      target: "none set",
      found: `${(1222 - peakToDrop("6", 60)).toFixed(1)} °C`,
      met: true,
    },
    {
      check: "worth of a hold of 15 minutes at cone 6, after 60 and 150 °C/h",
      target: "none set",
      found: `${degreesOfHold("6", 60, 15).toFixed(1)} and ${degreesOfHold("6", 150, 15).toFixed(1)} °C`,
      met: true,
    },
  ];
}

/** What potters and makers report, with the source in the check's own words. */
function reportedChecks(): PhysicsCheck[] {
  const climb = (topC: number): Curve =>
    curveThrough([
      [0, 20],
      [topC - 20, topC],
    ]);
  const noCooling = { roomC: 20, timeConstantHours: 1e-3 };
  const toCone8 = holdToDrop("8", climb(1222), noCooling) ?? Number.NaN;
  const left = (90 - bendDeg(workOf("6", climb(1222 - (8 * 5) / 9)))) / (90 - 8);
  const shielded = safeRate({ clay: "stoneware", lengthM: SHIELDED_LENGTH_M, direction: "cooling", temperatureC: 573 });
  const wall = safeRate({ clay: "stoneware", lengthM: 0.004, direction: "cooling", temperatureC: 573 });
  return [
    {
      check: "minutes at cone 6 until cone 8 falls, after 60 °C/h (potters forum report: 40)",
      target: "25–60 min",
      found: `${toCone8.toFixed(0)} min`,
      met: toCone8 >= 25 && toCone8 <= 60,
    },
    {
      check:
        "share of a cone's fall left 8 °F before its end (a cone maker's engineer, mailing list, 3 January 2003: two fifths)",
      target: "0.40 ± 0.15",
      found: left.toFixed(2),
      met: Math.abs(left - 0.4) <= 0.15,
    },
    {
      check:
        "stoneware cooling through 573 °C, evened out over 0.1 m and over an 8 mm wall (Fortuna, Sanitaryware 2000: 50 °C/h)",
      target: "below and above 50 °C/h",
      found: `${shielded.rateCPerHour.toFixed(0)} and ${wall.rateCPerHour.toFixed(0)} °C/h`,
      met: shielded.rateCPerHour < 50 && wall.rateCPerHour > 50,
    },
  ];
}

/** Every row of the heat-work half of the validation report. */
export function heatWorkReport(): PhysicsCheck[] {
  const timing = heatWorkTiming();
  return [
    ...tableChecks(),
    quadratureCheck(),
    ...programmeChecks(),
    ...reportedChecks(),
    {
      check: `heat work of every cone over ${timing.readings} readings, processor time`,
      target: "≤ 30 ms",
      found: `${timing.oursMs.toFixed(1)} ms, ${timing.timesFaster.toFixed(1)} times faster than written plainly`,
      met: timing.oursMs <= 30,
    },
  ];
}

if (process.argv[1] === import.meta.filename) {
  for (const { check, target, found, met } of heatWorkReport()) {
    console.log(`${met ? "met   " : "missed"}  ${check}: ${found} (target ${target})`);
  }
}
