import { type ConeName, conePlace, isCone, ladderOf } from "../../../firing/cones/cone.ts";
import { bendDeg } from "../../../firing/heat-work/bend.ts";
import { equivalentC, GROWTH_PER_C } from "../../../firing/heat-work/ladder-position.ts";
import type { WatchedHeat } from "../../../studio/api/watch-contract.ts";

/**
 * How the probe's cones would stand on a shelf of which only its place on the ladder is known: each by the °C that it
 * lacks, or got more than it needed.
 */
export function shelfCones(shelf: WatchedHeat, probe: WatchedHeat): WatchedHeat["cones"] {
  if (shelf.cones.length > 0) return shelf.cones;
  const gotC = equivalentC(shelf.ladder);
  return probe.cones.flatMap(({ cone }) => {
    if (!isCone(cone)) return [];
    const beyondC = gotC - equivalentC(ladderOf(cone as ConeName));
    const work = Math.exp(beyondC * (GROWTH_PER_C[conePlace(cone)] as number));
    return [{ cone, bendDeg: bendDeg(work), downAtMin: null }];
  });
}
