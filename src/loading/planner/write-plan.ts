import { degrees, wrapDegrees } from "../../measures/angle.ts";
import { type Level, LOAD_PLAN_FORMAT, type LoadPlan, type Placement } from "../load-plan.ts";
import { whyLeftOut } from "./left-out.ts";
import type { LoadSnapshot } from "./load-search.ts";
import type { LoadTask } from "./task.ts";

const rounded = (mm: number): number => Math.round(mm * 1000) / 1000 + 0;

/** Writes a load down as a plan, with what stays out and why. Levels that hold nothing at the top are left away. */
export function writePlan(task: LoadTask, load: LoadSnapshot | null, seed: number): LoadPlan {
  const levels = load ? writeLevels(task, load) : [];
  while (levels.at(-1)?.placements.length === 0) levels.pop();
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

function writeLevels(task: LoadTask, load: LoadSnapshot): Level[] {
  const { structure, columns } = load;
  return structure.levels.map((level, i): Level => {
    const { kindOf, places } = load.levels[i] as LoadSnapshot["levels"][number];
    const stacks = structure.stacks[i] as LoadSnapshot["structure"]["stacks"][number];
    return {
      shelf: level.seat.shelf.name,
      topMm: rounded(level.topMm),
      xMm: 0,
      yMm: 0,
      turnDeg: level.seat.turnDeg,
      posts: stacks.map((stack, c) => ({
        xMm: rounded(columns.x[c] as number),
        yMm: rounded(columns.y[c] as number),
        turnDeg: rounded(columns.turnDeg[c] as number),
        heightsMm: stack.parts.map((part) => (task.posts[part] as LoadTask["posts"][number]).heightMm),
      })),
      placements: [...kindOf].map((kind, p): Placement => {
        const piece = task.kinds[kind] as LoadTask["kinds"][number];
        const turn = piece.swingMm === 0 ? 0 : (places[3 * p + 2] as number) / piece.swingMm;
        return {
          ware: task.request.ware[kind]?.name ?? "",
          xMm: rounded(places[3 * p] as number),
          yMm: rounded(places[3 * p + 1] as number),
          turnDeg: Math.round(wrapDegrees(degrees(turn)) * 10000) / 10000,
        };
      }),
    };
  });
}

function fillOf(task: LoadTask, load: LoadSnapshot, level: number): number {
  const area = (load.structure.levels[level] as LoadSnapshot["structure"]["levels"][number]).seat.areaMm2;
  const kinds = (load.levels[level] as LoadSnapshot["levels"][number]).kindOf;
  let covered = 0;
  for (const kind of kinds) covered += Math.PI * (task.kinds[kind] as LoadTask["kinds"][number]).radius ** 2;
  return Math.round((covered / area) * 1000) / 1000;
}
