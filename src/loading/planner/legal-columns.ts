import type { Chance } from "../../measures/seeded-chance.ts";
import { type Columns, columnsAt, postClearsProbe } from "./columns.ts";
import type { Structure } from "./structure.ts";
import type { LoadTask } from "./task.ts";

const INWARD = [0, 0.12, 0.3, 0.5];
const STEP_DEG = 7.5;

/** Every place tried for the three columns of a structure that keeps them under the shelves and clear of the probes. */
export function legalColumns(task: LoadTask, structure: Structure): Columns[] {
  for (const inward of INWARD) {
    const found: Columns[] = [];
    for (let firstDeg = 0; firstDeg < 120; firstDeg += STEP_DEG) {
      const columns = columnsFor(task, structure, firstDeg, inward);
      if (columns) found.push(columns);
    }
    if (found.length > 0) return found;
  }
  return [];
}

/** Other columns for the search to shift to, anywhere round the kiln. */
export function otherColumns(task: LoadTask, structure: Structure, chance: Chance): Columns | null {
  const inward = chance.next() < 0.8 ? 0 : chance.next() * 0.2;
  return columnsFor(task, structure, chance.next() * 120, inward);
}

function columnsFor(task: LoadTask, structure: Structure, firstDeg: number, inward: number): Columns | null {
  const regions = [...new Set(structure.levels.map((level) => level.seat.region))];
  const columns = columnsAt(regions, widest(task, structure), firstDeg, inward);
  if (!columns) return null;
  const { probeMm } = task.request.rules;
  const clear = structure.levels.every((level, i) => {
    const base = i === 0 ? 0 : (structure.levels[i - 1] as Structure["levels"][number]).topMm;
    const width = widest(task, structure);
    return task.probes.every((probe) =>
      [0, 1, 2].every((c) => postClearsProbe(columns, c, width, base, base + level.height.totalMm, probe, probeMm)),
    );
  });
  return clear ? columns : null;
}

function widest(task: LoadTask, structure: Structure): number {
  const parts = structure.stacks.flatMap((stacks) => stacks.flatMap((stack) => stack.parts));
  return Math.max(...parts.map((part) => (task.posts[part] as LoadTask["posts"][number]).widthMm));
}
