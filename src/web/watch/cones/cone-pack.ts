import { CONES, type ConeName, conePlace, isCone, isHalfCone, ladderOf } from "../../../firing/cones/cone.ts";
import { bendDeg } from "../../../firing/heat-work/bend.ts";
import { equivalentC, GROWTH_PER_C } from "../../../firing/heat-work/ladder-position.ts";
import type { WatchedHeat } from "../../../studio/api/watch-contract.ts";

/** One cone as it stands by now. */
export interface StandingCone {
  readonly cone: string;
  readonly bendDeg: number;
  /** True where cones between it and the one before are left out. */
  readonly isApart: boolean;
}

const WHOLE = CONES.filter((cone) => !isHalfCone(cone));
const IN_A_ROW = 5;

/**
 * The cones to draw: those about where the firing stands now, and the one that is waited for. When that is near, it is
 * the pack that stands in the kiln: the one wanted with its neighbours on either side.
 *
 * @param wanted the cone waited for, or null
 */
export function conePack(heat: WatchedHeat, wanted: string | null): StandingCone[] {
  const names = namesToDraw(heat.ladder, wanted);
  return names.map((cone, i) => {
    const before = names[i - 1];
    const isApart = before !== undefined && WHOLE.indexOf(cone) - WHOLE.indexOf(before) > 1;
    return { cone, bendDeg: bendOf(cone, heat), isApart };
  });
}

function namesToDraw(ladder: number, wanted: string | null): ConeName[] {
  const last = WHOLE.length - 1;
  const here = Math.max(0, Math.min(last, Math.floor(ladder)));
  const aim = wanted !== null && isCone(wanted) ? WHOLE.findIndex((cone) => ladderOf(cone) >= ladderOf(wanted)) : -1;
  const row = (from: number, count: number): ConeName[] => {
    const first = Math.max(0, Math.min(last - count + 1, from));
    return WHOLE.slice(first, first + count);
  };
  if (aim < 0) return row(here - 1, IN_A_ROW);
  if (here >= aim - 3) return row(Math.max(aim, here) - 3, IN_A_ROW);
  return [...row(here - 1, IN_A_ROW - 1), WHOLE[aim] as ConeName];
}

/** As the studio says; else from the place on the ladder: by the °C that the cone lacks, or got more than it needed. */
function bendOf(cone: ConeName, heat: WatchedHeat): number {
  const said = heat.cones.find((each) => each.cone === cone);
  if (said !== undefined) return said.bendDeg;
  const beyondC = equivalentC(heat.ladder) - equivalentC(ladderOf(cone));
  return bendDeg(Math.exp(beyondC * (GROWTH_PER_C[conePlace(cone)] as number)));
}
