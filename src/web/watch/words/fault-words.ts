import type { WatchedFault } from "../../../studio/api/watch-contract.ts";
import { clockWords } from "../../firings/words/clock-words.ts";

const TITLES: Readonly<Record<string, string>> = {
  stalling: "It falls behind its programme",
  overshoot: "It is hotter than the programme asks",
  "dead probe": "The probe cannot be believed",
  "slipped probe": "The probe may have slipped out",
  jump: "A sudden jump of the reading",
  silence: "No readings come in",
};

/** What was noticed, in a few words. */
export const faultTitle = ({ kind }: Pick<WatchedFault, "kind">): string =>
  TITLES[kind] ?? `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;

/** What to do where the kiln may be hotter than it should be. Wareboard cannot do it. */
export const DANGER_CAUTION =
  "Go to the kiln and look. If it heats on where it should not, switch it off by hand, at its isolator where its manual says so. Wareboard cannot: it only watches.";

/** What to do for the others. */
export const LOOK_CAUTION = "Have a look when you can. Wareboard only watches; the kiln is yours to switch.";

/** From when to when: "since Wed 14:05", "Wed 14:05 to Wed 14:20". */
export function faultSpan({ sinceMin, untilMin }: WatchedFault, startAt: string): string {
  const since = clockWords(startAt, sinceMin);
  return untilMin === null ? `since ${since}` : `${since} to ${clockWords(startAt, untilMin)}`;
}

/** Those that last, danger first; then those that are over, the newest first. */
export function faultsInOrder(faults: readonly WatchedFault[]): {
  readonly lasting: readonly WatchedFault[];
  readonly over: readonly WatchedFault[];
} {
  const lasting = faults.filter(({ untilMin }) => untilMin === null);
  const over = faults.filter(({ untilMin }) => untilMin !== null);
  return {
    lasting: lasting.toSorted((a, b) => Number(b.isDanger) - Number(a.isDanger) || b.sinceMin - a.sinceMin),
    over: over.toSorted((a, b) => b.sinceMin - a.sinceMin),
  };
}
