import type { StructureLevel } from "./structure-level.ts";
import type { LoadTask } from "./task.ts";

/** The share of a shelf that ware covers in a good load, gaps counted in. Found by measuring the planner's own loads. */
const USUAL_DENSITY = 0.8;

/**
 * What a structure could hold if pieces could be cut up: pieces poured in by worth for the room they take, each onto
 * levels tall enough for it. The levels that suit a piece are nested by height, so pouring the best first is the optimum of
 * this linear programme (greedy on a laminar family; Edmonds 1970).
 */
export function rankedWorth(task: LoadTask, levels: readonly StructureLevel[]): number {
  const order = task.order;
  const post = task.widestPostMm + task.request.rules.gapMm;
  const sorted = levels
    .map((level, i) => ({
      clearMm: level.clearMm,
      room: USUAL_DENSITY * (level.seat.areaMm2 - (i + 1 < levels.length ? 3 * post * post : 0)),
    }))
    .sort((a, b) => a.clearMm - b.clearMm);
  const room = sorted.map((each) => each.room);
  let worth = 0;
  for (const k of order) {
    const kind = task.kinds[k] as LoadTask["kinds"][number];
    let wanted = (task.counts[k] as number) * kind.areaMm2;
    const whole = wanted;
    // The lowest level that is tall enough first: taller room is kept for taller ware.
    for (let l = 0; l < sorted.length && wanted > 0; l++) {
      if ((sorted[l] as { clearMm: number }).clearMm < kind.heightMm) continue;
      const poured = Math.min(wanted, room[l] as number);
      room[l] = (room[l] as number) - poured;
      wanted -= poured;
    }
    worth += ((task.worth[k] as number) * (task.counts[k] as number) * (whole - wanted)) / whole;
  }
  return worth;
}
