import type { LeftOut, LoadPlanFile } from "../../loading/load-plan.ts";
import type { LoadRequestFile } from "../../loading/load-request.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { type Place, placeKey } from "./places.ts";

const CHOSEN_SINCE = "chosen since this was planned";

/**
 * A plan held to another choice of pieces: what is still wanted stands where it stood, what is not is taken out. Where
 * fewer of a kind are wanted than stand there, those in the kiln already stay first, then those that are pinned.
 */
export function keepStanding(
  { plan, ticks, pins }: Pick<LoadRecord, "plan" | "ticks" | "pins">,
  request: LoadRequestFile,
): LoadPlanFile | null {
  if (plan === null) return null;
  const [ticked, pinned] = [keys(ticks), keys(pins)];
  const rank = (key: string): number => (ticked.has(key) ? 0 : pinned.has(key) ? 1 : 2);
  const places = plan.levels.flatMap(({ placements }, level) =>
    placements.map(({ ware }, placement) => ({ ware, key: placeKey({ level, placement }) })),
  );
  const room = new Map(request.ware.map(({ name, count }) => [name, count]));
  const staying = new Set<string>();
  for (const { ware, key } of [...places].sort((a, b) => rank(a.key) - rank(b.key))) {
    const left = room.get(ware) ?? 0;
    if (left === 0) continue;
    room.set(ware, left - 1);
    staying.add(key);
  }
  const levels = plan.levels.map((level, i) => ({
    ...level,
    placements: level.placements.filter((_, placement) => staying.has(placeKey({ level: i, placement }))),
  }));
  const left = [...room].flatMap(([ware, count]): LeftOut[] => {
    const reason = plan.left.find((each) => each.ware === ware)?.reason ?? CHOSEN_SINCE;
    return count === 0 ? [] : [{ ware, count, reason }];
  });
  // The figures were the planner's, of the plan it made.
  return { format: plan.format, levels, left };
}

const keys = (places: readonly Place[]): ReadonlySet<string> => new Set(places.map(placeKey));
