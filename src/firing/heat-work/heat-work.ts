import type { ConeName } from "../cones/cone.ts";
import { bendDeg } from "./bend.ts";
import { CONE_KINETICS } from "./cone-kinetics.ts";
import { coneWork, prepareCurve } from "./cone-work.ts";
import { type Curve, checkCurve, peakOf } from "./curve.ts";
import { type HeatWorkWarning, warningsOf } from "./heat-work-warnings.ts";
import { equivalentC, ladderPosition } from "./ladder-position.ts";

/** What one cone would look like after a firing. */
export interface ConeReached {
  readonly cone: ConeName;
  /** Share of the work that lays it down: down at 1 (0.999 counts). Counted up to 1000. */
  readonly work: number;
  /** Degrees it has bent, 8 upright to 90 down. */
  readonly bendDeg: number;
  /** Minutes on the log's clock when it went down, or null. */
  readonly downAtMin: number | null;
}

/** What a firing did to cones standing where the temperature was taken. */
export interface HeatWork {
  /** The hottest whole cone that is down; null below cone 022. */
  readonly coneDown: ConeName | null;
  readonly next: ConeName | null;
  /** How far towards the next whole cone, 0 to 1. */
  readonly towardNext: number;
  /** 022 = 0, 021 = 1, … 01 = 21, 1 = 22, … 6 = 27, … 14 = 35. */
  readonly ladder: number;
  /** The temperature at which a steady 60 °C/h does the same work, °C. */
  readonly equivalentC: number;
  readonly peakC: number;
  /** Every cone of the table, coolest first, half cones too. */
  readonly cones: readonly ConeReached[];
  /** Where the published data do not reach, or the log does not. */
  readonly warnings: readonly HeatWorkWarning[];
}

/**
 * The heat work of a firing: what every cone standing at the probe would have done. The whole curve counts, its
 * cooling too, which adds 0.1 to 0.2 to the work of the cone fired to.
 *
 * Valid for 15 to 150 °C/h over the last 100 °C, where it reproduces the published table; outside it answers with a
 * warning. Cones feel the temperature of where they stand: this is the probe's, not the ware's.
 *
 * @param curve minutes and °C; at least two points, times never falling
 * @throws BadInput where the curve is none
 */
export function heatWork(curve: Curve): HeatWork {
  checkCurve(curve);
  const prepared = prepareCurve(curve);
  const cones = CONE_KINETICS.map((kinetics) => {
    const { work, downAtMin } = coneWork(kinetics, prepared);
    return { cone: kinetics.cone, work, bendDeg: bendDeg(work), downAtMin };
  });
  const { outOfOrder, ...position } = ladderPosition(cones.map((each) => each.work));
  const reached = {
    ...position,
    equivalentC: equivalentC(position.ladder),
    peakC: peakOf(curve),
    cones,
  };
  return { ...reached, warnings: warningsOf(reached, outOfOrder, curve, prepared) };
}

/** By how many °C of heat work one firing, or one place in the kiln, got more than another. */
export const degreesApart = (more: HeatWork, less: HeatWork): number => more.equivalentC - less.equivalentC;
