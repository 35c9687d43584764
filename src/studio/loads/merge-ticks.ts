import type { LoadRecord, Tick } from "../records/load-record.ts";
import { type Place, placeKey } from "./places.ts";

/** A piece set down, or the tick taken back, at a moment. */
export interface TickSaid extends Place {
  readonly at: string;
  readonly in: boolean;
}

/**
 * Ticks merged into a load's own, in whatever order they come and however often: for each place the latest word counts,
 * and of two at one moment that the piece is in.
 *
 * @param now no clock of another device is believed past this moment, or its word could never be taken back
 */
export function mergeTicks(
  { ticks, takenBack = [] }: Pick<LoadRecord, "ticks" | "takenBack">,
  said: readonly TickSaid[],
  now: string,
): Pick<LoadRecord, "ticks" | "takenBack"> {
  const latest = new Map<string, TickSaid>();
  const hear = (word: TickSaid): void => {
    const before = latest.get(placeKey(word));
    if (!before || before.at < word.at || (before.at === word.at && word.in)) latest.set(placeKey(word), word);
  };
  for (const tick of ticks) hear({ ...tick, in: true });
  for (const tick of takenBack) hear({ ...tick, in: false });
  for (const tick of said) hear({ ...tick, at: tick.at > now ? now : tick.at });
  const inOrder = [...latest.values()].sort((a, b) => a.level - b.level || a.placement - b.placement);
  const those = (isIn: boolean): Tick[] =>
    inOrder.filter((word) => word.in === isIn).map(({ level, placement, at }) => ({ level, placement, at }));
  const out = those(false);
  return { ticks: those(true), ...(out.length > 0 || takenBack.length > 0 ? { takenBack: out } : {}) };
}
