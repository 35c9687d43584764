import { wrapDegrees } from "../../measures/angle.ts";

// A place on the kiln's wall, as a potter points it out: the face of a clock laid in the kiln, 12 at the far side, 6
// toward her. The files count degrees counter-clockwise from 3 o'clock; half a degree is a minute of the clock.

const MINUTES_ROUND = 720;
const MINUTES_PER_DEGREE = 2;

/** `4 o’clock`, `5:24`; to the minute, which is half a degree. */
export function directionText(angleDeg: number): string {
  const minutes = Math.round(wrapDegrees(90 - angleDeg) * MINUTES_PER_DEGREE) % MINUTES_ROUND;
  const hour = Math.floor(minutes / 60) || 12;
  const past = minutes % 60;
  return past === 0 ? `${hour} o’clock` : `${hour}:${String(past).padStart(2, "0")}`;
}

/**
 * Reads a direction: `4`, `4:30`, `4 o'clock`, `4.5`, or degrees as the files count them, `330°` or `330 deg`.
 *
 * @returns degrees from 0 up to 360, or null where it is no direction
 */
export function readDirection(text: string): number | null {
  const plain = text.trim().toLowerCase().replaceAll("’", "'").replace(",", ".");
  const degrees = /^(-?\d+(?:\.\d+)?)\s*(?:°|deg|degrees)$/.exec(plain);
  if (degrees) return wrapDegrees(Number(degrees[1]));
  const clock = /^(\d{1,2})(?::(\d{2})|(\.\d+))?\s*(?:o'?\s?clock|h)?$/.exec(plain);
  if (!clock) return null;
  const hour = Number(clock[1]) + Number(clock[3] ?? 0);
  const past = Number(clock[2] ?? 0);
  if (hour >= 13 || past >= 60) return null;
  return wrapDegrees(90 - (hour * 60 + past) / MINUTES_PER_DEGREE);
}
