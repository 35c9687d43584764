import type { Level, LoadPlan } from "../loading/load-plan.ts";
import type { LoadRequest } from "../loading/load-request.ts";

/**
 * Whether the ware of two levels could stand in each other's place: the same kind of shelf under both, and each level's
 * tallest piece under the other's ceiling. Whether every piece also clears the posts there is for the planner to say.
 *
 * @returns asked with levels counted from zero at the floor
 */
export function mayTrade(request: LoadRequest, plan: LoadPlan): (level: number, other: number) => boolean {
  const levels = [...plan.levels].sort((a, b) => a.topMm - b.topMm);
  const wares = new Map(request.ware.map((ware) => [ware.name, ware]));
  const tallestMm = levels.map((level) =>
    level.placements.reduce((most, { ware: name }) => {
      const ware = wares.get(name);
      return ware === undefined ? most : Math.max(most, ware.heightMm + (ware.cookie?.thicknessMm ?? 0));
    }, 0),
  );
  const roomMm = levels.map((level, i) => headroom(request, level, levels[i + 1]));
  return (a, b) =>
    levels[a] !== undefined &&
    levels[a].shelf === levels[b]?.shelf &&
    (tallestMm[a] as number) <= (roomMm[b] as number) &&
    (tallestMm[b] as number) <= (roomMm[a] as number);
}

function headroom(request: LoadRequest, level: Level, above: Level | undefined): number {
  const { headroomMm, lidMm } = request.rules;
  if (above === undefined) return request.kiln.chamber.depthMm - lidMm - level.topMm;
  const shelf = request.furniture.shelves.find((each) => each.name === above.shelf);
  return above.topMm - (shelf?.thicknessMm ?? 0) - headroomMm - level.topMm;
}
