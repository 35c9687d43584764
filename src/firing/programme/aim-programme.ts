import { BadInput } from "../../measures/bad-input.ts";
import { type ConeName, conePlace } from "../cones/cone.ts";
import { CONE_TABLE, type ConeRow } from "../cones/cone-table.ts";
import type { Curve } from "../heat-work/curve.ts";
import { GROWTH_PER_C } from "../heat-work/ladder-position.ts";
import { workOf } from "../heat-work/questions.ts";
import { peakSegment, programmeCurve } from "./ideal-curve.ts";
import type { Programme } from "./programme.ts";

/** More than this above a cone's table, and the kiln is not following, °C. */
const FURTHEST_ABOVE_C = 60;
/** A day's hold may stand for this much of the climb, °C. */
const FURTHEST_BELOW_C = 250;

/**
 * The lowest whole degree to peak at so that a cone falls: Newton's method on the logarithm of the work, which rises
 * almost straight with the peak, then degree by degree.
 *
 * @param work the cone's work when the programme peaks at a temperature
 * @param hottestC what the kiln is rated for
 * @throws BadInput where it does not fall even at the highest peak allowed
 */
export function lowestPeak(
  cone: ConeName,
  work: (peakC: number) => number,
  hottestC = Number.POSITIVE_INFINITY,
): number {
  const tableC = (CONE_TABLE[conePlace(cone)] as ConeRow).at60C;
  const growth = GROWTH_PER_C[conePlace(cone)] as number;
  const highest = Math.floor(Math.min(hottestC, tableC + FURTHEST_ABOVE_C));
  const lowest = tableC - FURTHEST_BELOW_C;
  let peakC = Math.min(tableC, highest);
  for (let i = 0; i < 12; i++) {
    const step = -Math.log(Math.max(1e-6, work(peakC))) / growth;
    peakC = Math.max(lowest, Math.min(highest, peakC + Math.max(-60, Math.min(60, step))));
    if (Math.abs(step) < 0.2 || peakC === highest) break;
  }
  peakC = Math.round(peakC);
  while (peakC < highest && work(peakC) < 1) peakC++;
  while (peakC > lowest && work(peakC - 1) >= 1) peakC--;
  if (work(peakC) >= 1) return peakC;
  const limit =
    highest < tableC + FURTHEST_ABOVE_C
      ? `at ${highest} °C, the hottest it is rated for`
      : `at ${highest} °C on the programme`;
  throw new BadInput({
    code: "never-reaches",
    path: "cone",
    found: `cone ${cone}, which this kiln does not reach even ${limit}`,
    expected: "a cooler cone, a longer hold, a slower pace, or a kiln with more power",
  });
}

/**
 * The same programme with its peak moved so that a cone falls: for one that was edited, or comes from elsewhere. Only
 * the targets that are its highest move.
 *
 * @param simulate what the kiln makes of a programme; an ideal kiln where left out
 * @throws BadInput where no peak does it
 */
export function aimedAt(
  programme: Programme,
  cone: ConeName,
  simulate: (programme: Programme) => Curve = programmeCurve,
  hottestC = Number.POSITIVE_INFINITY,
): Programme {
  const peak = peakSegment(programme);
  const highest = programme.segments[peak]?.targetC;
  const at = (peakC: number): Programme => ({
    ...programme,
    cone,
    segments: programme.segments.map((segment) =>
      segment.targetC === highest ? { ...segment, targetC: peakC } : segment,
    ),
  });
  return at(lowestPeak(cone, (peakC) => workOf(cone, simulate(at(peakC))), hottestC));
}
