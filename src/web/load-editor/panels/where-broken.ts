import type { Place as Where } from "../../../loading/checker/broken.ts";
import type { Place } from "../../../studio/loads/places.ts";

/** A piece of the plan as a place. */
export const pieceOf = ({ level, placement }: Extract<Where, { kind: "piece" }>): Place => ({ level, placement });

/** The level to look at to see what is wrong: the one it concerns, else the first that is involved. */
export function levelOf(level: number | null, places: readonly Where[]): number | null {
  if (level !== null) return level;
  for (const place of places) if ("level" in place) return place.level;
  return null;
}
