import { radians } from "../../measures/angle.ts";
import type { LevelSpace, Standoff } from "../packing/level-space.ts";
import type { Columns } from "./columns.ts";
import type { Structure } from "./structure.ts";
import type { LoadTask } from "./task.ts";

/** Where ware may stand on one level of a structure: its shelf, the wall, the posts of the shelf above, probes and spyholes. */
export function standingRoom(task: LoadTask, structure: Structure, columns: Columns, index: number): LevelSpace {
  const { rules } = task.request;
  const level = structure.levels[index] as Structure["levels"][number];
  const standoffs: Standoff[] = [];
  for (const [c, stack] of (structure.stacks[index + 1] ?? []).entries()) {
    const kinds = stack.parts.map((part) => task.posts[part] as LoadTask["posts"][number]);
    const width = Math.max(...kinds.map((kind) => kind.widthMm));
    const x = columns.x[c] as number;
    const y = columns.y[c] as number;
    if (kinds.every((kind) => kind.round)) {
      const clear = width / 2 + rules.gapMm;
      standoffs.push({ obstacle: { kind: "line", x1: x, y1: y, x2: x, y2: y }, clearanceFor: () => clear });
    } else {
      const turn = radians(columns.turnDeg[c] as number);
      standoffs.push({ obstacle: { kind: "square", x, y, half: width / 2, turn }, clearanceFor: () => rules.gapMm });
    }
  }
  for (const probe of task.probes) {
    const { wallX, wallY, tipX, tipY, heightMm } = probe;
    standoffs.push({
      obstacle: { kind: "line", x1: wallX, y1: wallY, x2: tipX, y2: tipY },
      clearanceFor: (pieceMm) => planClearance(level.topMm, pieceMm, heightMm, heightMm, rules.probeMm),
    });
  }
  for (const mouth of task.mouths) {
    const { x, y, nx, ny, radiusMm, heightMm } = mouth;
    standoffs.push({
      obstacle: {
        kind: "line",
        x1: x - ny * radiusMm,
        y1: y + nx * radiusMm,
        x2: x + ny * radiusMm,
        y2: y - nx * radiusMm,
      },
      clearanceFor: (pieceMm) =>
        planClearance(level.topMm, pieceMm, heightMm - radiusMm, heightMm + radiusMm, rules.spyholeMm),
    });
  }
  return {
    bounds: [
      { region: level.seat.region, marginMm: 0 },
      { region: task.walls, marginMm: rules.gapMm },
    ],
    standoffs,
    gapMm: rules.gapMm,
  };
}

/**
 * The least distance seen from above that keeps a piece `clearance` away in space from something between two heights; below
 * zero where the piece passes above or beneath it. Where the piece spans the height, no clearance still means not into it.
 */
export function planClearance(
  topMm: number,
  pieceMm: number,
  lowMm: number,
  highMm: number,
  clearance: number,
): number {
  const up = Math.max(0, topMm - highMm, lowMm - (topMm + pieceMm));
  return up > 0 && up >= clearance ? Number.NEGATIVE_INFINITY : Math.sqrt(clearance * clearance - up * up);
}
