import type { ConeName } from "../../src/firing/cones/cone.ts";
import { conePlace } from "../../src/firing/cones/cone.ts";
import { CONE_TABLE } from "../../src/firing/cones/cone-table.ts";
import { CONE_KINETICS, type ConeKinetics } from "../../src/firing/heat-work/cone-kinetics.ts";
import { coneWork, prepareCurve } from "../../src/firing/heat-work/cone-work.ts";
import { curveThrough } from "../../src/firing/heat-work/curve.ts";
import { pointsOf } from "./fit.ts";

/** Where a steady ramp from room temperature lays a cone down, °C, by the code that reads logs. */
export function rampEndPointC(cone: ConeName, cPerHour: number): number {
  const topC = 1500;
  const ramp = curveThrough([
    [0, 20],
    [((topC - 20) / cPerHour) * 60, topC],
  ]);
  const { downAtMin } = coneWork(CONE_KINETICS[conePlace(cone)] as ConeKinetics, prepareCurve(ramp));
  return 20 + ((downAtMin ?? Number.NaN) * cPerHour) / 60;
}

/** Found minus published for every value of the self-supporting table, °C. */
export const tableErrors = (): number[] =>
  CONE_TABLE.flatMap((row) => pointsOf(row).map(([rate, tempC]) => rampEndPointC(row.cone, rate) - tempC));
