import type { Chamber } from "../../../kiln/chamber.ts";
import { chamberReach } from "../../../sheets/drawing/chamber-reach.ts";

/** How a kiln is framed in a drawing. Millimetres; the drawing's y runs down. */
export interface Frame {
  readonly reachX: number;
  readonly reachY: number;
  readonly depthMm: number;
  /** How thick walls are drawn: a hint, not a measure. */
  readonly wall: number;
  /** The size of lettering. */
  readonly letter: number;
  /** How far round a handle a finger may land. */
  readonly finger: number;
}

/** One frame for plan and elevation of a kiln, so that both are drawn to one scale. */
export function frameOf(chamber: Chamber): Frame {
  const { x, y } = chamberReach(chamber);
  const across = 2 * Math.max(x, y);
  const size = Math.max(across, chamber.depthMm);
  return {
    reachX: x,
    reachY: y,
    depthMm: chamber.depthMm,
    wall: size * 0.08,
    letter: size * 0.057,
    finger: size * 0.085,
  };
}

const PAD = 1.6;

/** The plan's viewBox: the chamber from above with its wall and the hours round it. */
export function planBox({ reachX, reachY, wall, letter }: Frame): string {
  const x = reachX + wall + PAD * letter;
  const y = reachY + wall + PAD * letter;
  return `${-x} ${-y} ${2 * x} ${2 * y}`;
}

/** The elevation's viewBox: floor at y = 0, the lid above it. */
export function sideBox({ reachX, depthMm, wall, letter }: Frame): string {
  const left = reachX + wall + 0.5 * letter;
  const right = reachX + wall + 0.5 * letter;
  return `${-left} ${-(depthMm + wall + 0.5 * letter)} ${left + right} ${depthMm + 2 * wall + 2.2 * letter}`;
}
