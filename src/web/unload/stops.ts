import type { Stop } from "./memory.ts";

/** Where the unpacking goes by: the opened kiln, every shelf from the top, what is kept at the end. */
export const stopsOf = (order: readonly number[]): Stop[] => ["opening", ...order, "summary"];

/** The stop after or before one; null past either end. */
export function stopNextTo(stops: readonly Stop[], here: Stop, by: 1 | -1): Stop | null {
  const at = stops.indexOf(here);
  return at < 0 ? null : (stops[at + by] ?? null);
}

export const stopName = (stop: Stop): string =>
  stop === "opening" ? "Opening" : stop === "summary" ? "Keep it" : `Shelf ${stop + 1}`;
