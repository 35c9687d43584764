import { degrees, wrapDegrees } from "../../measures/angle.ts";
import { type Level, LOAD_PLAN_FORMAT, type LoadPlan, type Placement } from "../load-plan.ts";
import { whyLeftOut } from "./left-out.ts";
import type { LoadSnapshot } from "./load-search.ts";
import type { Stand } from "./stand.ts";
import type { LoadTask } from "./task.ts";

/** As plans write millimetres: to a thousandth. */
export const rounded = (mm: number): number => Math.round(mm * 1000) / 1000 + 0;

/**
 * Writes a load down as a plan, with what stays out and why. Levels that hold nothing at the top are left away, unless the
 * furniture was given.
 */
export function writePlan(task: LoadTask, load: LoadSnapshot | null, seed: number): LoadPlan {
  const levels = load ? writeLevels(task, load) : [];
  while (load?.frame.shifted && levels.at(-1)?.placements.length === 0) levels.pop();
  const placed = task.counts.map((_, kind) => {
    const name = task.request.ware[kind]?.name;
    return levels.reduce((sum, level) => sum + level.placements.filter((each) => each.ware === name).length, 0);
  });
  const value = placed.reduce((sum, count, kind) => sum + count * (task.request.ware[kind]?.value ?? 0), 0);
  return {
    format: LOAD_PLAN_FORMAT,
    levels,
    left: whyLeftOut(task, load, placed),
    figures: {
      value,
      pieces: placed.reduce((sum, count) => sum + count, 0),
      waiting: task.counts.reduce((sum, count) => sum + count, 0),
      fillByLevel: levels.map((_, i) => fillOf(task, load as LoadSnapshot, i)),
      seed,
    },
  };
}

/** What is held is written as it was given, the rest after it. */
function writeLevels(task: LoadTask, load: LoadSnapshot): Level[] {
  const { stands, furniture } = load.frame;
  return furniture.map((level, i): Level => {
    const { kindOf, places } = load.levels[i] as LoadSnapshot["levels"][number];
    const { held, middleX, middleY } = stands[i] as Stand;
    const placements = [...held.placements];
    for (let p = placements.length; p < kindOf.length; p++) {
      const kind = kindOf[p] as number;
      const piece = task.kinds[kind] as LoadTask["kinds"][number];
      const turn = piece.swingMm === 0 ? 0 : (places[3 * p + 2] as number) / piece.swingMm;
      const placement: Placement = {
        ware: task.request.ware[kind]?.name ?? "",
        xMm: rounded(middleX + (places[3 * p] as number)),
        yMm: rounded(middleY + (places[3 * p + 1] as number)),
        turnDeg: Math.round(wrapDegrees(degrees(turn)) * 10000) / 10000,
      };
      placements.push(placement);
    }
    return { ...level, placements };
  });
}

function fillOf(task: LoadTask, load: LoadSnapshot, level: number): number {
  const { areaMm2 } = load.frame.stands[level] as Stand;
  const kinds = (load.levels[level] as LoadSnapshot["levels"][number]).kindOf;
  let covered = 0;
  for (const kind of kinds) covered += Math.PI * (task.kinds[kind] as LoadTask["kinds"][number]).radius ** 2;
  return Math.round((covered / areaMm2) * 1000) / 1000;
}
