import { degrees, wrapDegrees } from "../../measures/angle.ts";

// Dragging a probe or spyhole about the wall and up and down: places on the drawing to numbers a person would measure.

/** Angles go to whole degrees, and to a quarter hour of the clock where one is this near. */
const NEAR_QUARTER_DEG = 2;
const QUARTER_HOUR_DEG = 7.5;
const HEIGHT_STEP_MM = 5;

/** The same in inches: quarters. */
const HEIGHT_STEP_INCHES_MM = 25.4 / 4;

/**
 * The direction of a place on the plan from the axis, as a person would say it.
 *
 * @param xMm along +x, to the right on the plan
 * @param yMm along +y, to the far side: up on the plan
 * @returns degrees from 0 up to 360; null on the axis itself, which is no direction
 */
export function draggedAngleDeg(xMm: number, yMm: number): number | null {
  if (Math.hypot(xMm, yMm) < 1) return null;
  const angle = wrapDegrees(degrees(Math.atan2(yMm, xMm)));
  const quarter = Math.round(angle / QUARTER_HOUR_DEG) * QUARTER_HOUR_DEG;
  return wrapDegrees(Math.abs(angle - quarter) <= NEAR_QUARTER_DEG ? quarter : Math.round(angle));
}

/** A height dragged to, within the chamber, to the 5 mm or quarter inch. */
export function draggedHeightMm(heightMm: number, depthMm: number, inches = false): number {
  const step = inches ? HEIGHT_STEP_INCHES_MM : HEIGHT_STEP_MM;
  const stepped = Math.round(heightMm / step) * step;
  const inside = stepped > depthMm ? Math.floor(depthMm / step) * step : Math.max(0, stepped);
  return Math.round(inside * 100) / 100;
}

/** How far a key moves a fitting: round the wall clockwise by minutes of the clock, up by millimetres. */
export interface KeyMove {
  readonly turnDeg: number;
  readonly upMm: number;
}

/** What an arrow key does to the fitting in hand; with Shift in bigger steps; null for other keys. */
export function keyMove(key: string, big: boolean): KeyMove | null {
  const turn = big ? 15 : 1;
  const up = big ? 25 : HEIGHT_STEP_MM;
  if (key === "ArrowLeft") return { turnDeg: turn, upMm: 0 };
  if (key === "ArrowRight") return { turnDeg: -turn, upMm: 0 };
  if (key === "ArrowUp") return { turnDeg: 0, upMm: up };
  if (key === "ArrowDown") return { turnDeg: 0, upMm: -up };
  return null;
}
