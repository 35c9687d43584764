import { placedRegion } from "../../kiln/convex-region.ts";
import { radians } from "../../measures/angle.ts";
import type { LevelSpace, Obstacle, Standoff } from "../packing/level-space.ts";
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
    const widthMm = Math.max(...kinds.map((kind) => kind.widthMm));
    const x = columns.x[c] as number;
    const y = columns.y[c] as number;
    const turnDeg = columns.turnDeg[c] as number;
    const round = kinds.every((kind) => kind.round);
    standoffs.push(postStandoff({ x, y, turnDeg, widthMm, round }, () => rules.gapMm));
  }
  return {
    bounds: [
      { region: level.seat.region, marginMm: 0 },
      { region: task.walls, marginMm: rules.gapMm },
    ],
    standoffs: [...standoffs, ...fittingStandoffs(task, level.topMm)],
    gapMm: rules.gapMm,
  };
}

/** A post that ware keeps clear of. Its width is its diameter where it is round. */
export function postStandoff(
  post: {
    readonly x: number;
    readonly y: number;
    readonly turnDeg: number;
    readonly widthMm: number;
    readonly round: boolean;
  },
  clearanceFor: Standoff["clearanceFor"],
): Standoff {
  const { x, y } = post;
  const half = post.widthMm / 2;
  return post.round
    ? { obstacle: { kind: "line", x1: x, y1: y, x2: x, y2: y }, clearanceFor: (mm) => half + clearanceFor(mm) }
    : { obstacle: { kind: "square", x, y, half, turn: radians(post.turnDeg) }, clearanceFor };
}

/** What ware on a face at `topMm` keeps from the probes and from the mouths of the open spyholes. */
export function fittingStandoffs(task: LoadTask, topMm: number): Standoff[] {
  const { rules } = task.request;
  return [
    ...task.probes.map(
      ({ wallX, wallY, tipX, tipY, heightMm }): Standoff => ({
        obstacle: { kind: "line", x1: wallX, y1: wallY, x2: tipX, y2: tipY },
        clearanceFor: (pieceMm) => planClearance(topMm, pieceMm, heightMm, heightMm, rules.probeMm),
      }),
    ),
    ...task.mouths.map(
      ({ x, y, nx, ny, radiusMm, heightMm }): Standoff => ({
        obstacle: {
          kind: "line",
          x1: x - ny * radiusMm,
          y1: y + nx * radiusMm,
          x2: x + ny * radiusMm,
          y2: y - nx * radiusMm,
        },
        clearanceFor: (pieceMm) =>
          planClearance(topMm, pieceMm, heightMm - radiusMm, heightMm + radiusMm, rules.spyholeMm),
      }),
    ),
  ];
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

/** The same room seen from another middle. */
export function spaceFrom(space: LevelSpace, middleX: number, middleY: number): LevelSpace {
  if (middleX === 0 && middleY === 0) return space;
  return {
    ...space,
    bounds: space.bounds.map(({ region, marginMm }) => ({
      region: placedRegion(region, -middleX, -middleY, 0),
      marginMm,
    })),
    standoffs: space.standoffs.map((standoff) => ({
      ...standoff,
      obstacle: obstacleFrom(standoff.obstacle, middleX, middleY),
    })),
  };
}

function obstacleFrom(obstacle: Obstacle, x: number, y: number): Obstacle {
  switch (obstacle.kind) {
    case "square":
      return { ...obstacle, x: obstacle.x - x, y: obstacle.y - y };
    case "line":
      return {
        ...obstacle,
        x1: obstacle.x1 - x,
        y1: obstacle.y1 - y,
        x2: obstacle.x2 - x,
        y2: obstacle.y2 - y,
      };
    case "beyond":
      return { ...obstacle, offset: obstacle.offset - obstacle.nx * x - obstacle.ny * y };
  }
}
