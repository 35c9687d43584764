import type { LoadPlan } from "../../loading/load-plan.ts";
import type { Pin } from "../../studio/records/load-record.ts";

const SAME_MM = 1e-3;

/** Where the pinned pieces of one plan stand in another, planned around them. One that is not there is pinned no more. */
export function pinsAfter(pins: readonly Pin[], before: LoadPlan, after: LoadPlan): Pin[] {
  const taken = new Set<string>();
  return pins.flatMap((pin) => {
    const level = before.levels[pin.level];
    const piece = level?.placements[pin.placement];
    if (!level || !piece) return [];
    const there = after.levels.findIndex(({ topMm }) => Math.abs(topMm - level.topMm) < SAME_MM);
    const placement = (after.levels[there]?.placements ?? []).findIndex(
      (each, i) =>
        !taken.has(`${there} ${i}`) &&
        each.ware === piece.ware &&
        Math.abs(each.xMm - piece.xMm) < SAME_MM &&
        Math.abs(each.yMm - piece.yMm) < SAME_MM,
    );
    if (placement < 0) return [];
    taken.add(`${there} ${placement}`);
    return [{ level: there, placement }];
  });
}
