import type { WatchedHeat } from "../../../studio/api/watch-contract.ts";

/** How far the cones are: "Cone 5 down, 6 at 40 %". */
export function conesWords({ coneDown, next, towardNext }: WatchedHeat): string {
  const percent = Math.floor(towardNext * 100);
  const on = next === null ? "" : percent < 1 ? "" : `, ${next} at ${percent} %`;
  if (coneDown !== null) return `Cone ${coneDown} down${on}`;
  return next === null || percent < 1 ? "No cone has begun to bend" : `No cone down, ${next} at ${percent} %`;
}

/** "At the probe", "Shelf 2". Shelves are counted from the bottom, as on the sheet. */
export const placeOfHeat = ({ level }: WatchedHeat): string => (level === null ? "At the probe" : `Shelf ${level + 1}`);
