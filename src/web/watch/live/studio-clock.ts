import type { KnownWatch } from "./kept-watch.ts";

/**
 * The moment it is by the studio's clock, in milliseconds: on from what the studio said last, as fast as its clock runs.
 * A rehearsal's clock never runs ahead of the world's.
 */
export function studioNowMs({ watch, heardMs }: KnownWatch, deviceMs: number): number {
  const saidMs = Date.parse(watch.now);
  const onwardMs = saidMs + Math.max(0, deviceMs - heardMs) * watch.pace;
  if (watch.pace === 1) return onwardMs;
  return Math.max(saidMs, Math.min(onwardMs, deviceMs));
}

/** Minutes of a firing at a moment. */
export const minuteOf = (startedAt: string, ms: number): number => (ms - Date.parse(startedAt)) / 60_000;
