import type { PostInPlace } from "../loading/checker/posts-in-place.ts";
import { formatLength, formatLengthNumber, type LengthUnits } from "../measures/length.ts";
import { listText } from "./clock-direction.ts";

/** `three posts of 100 mm`, `two posts of 100 mm and one of 75 mm with 25 mm on top`. */
export function postsPhrase(posts: readonly PostInPlace[], units: LengthUnits): string {
  return listText(
    kindsOf(posts).map(({ heightsMm, count }, i) => {
      const noun = i > 0 ? "" : count === 1 ? " post" : " posts";
      const heights = heightsMm.map((height) => formatLength(height, units)).join(" with ");
      return `${numberWord(count)}${noun} of ${heights}${heightsMm.length > 1 ? " on top" : ""}`;
    }),
  );
}

/** `3 × 100 mm`, `2 × 100 mm, 1 × 75 + 25 mm`. */
export function postsFigure(posts: readonly PostInPlace[], units: LengthUnits): string {
  return kindsOf(posts)
    .map(({ heightsMm, count }) => {
      const last = formatLength(heightsMm.at(-1) ?? 0, units);
      const lower = heightsMm.slice(0, -1).map((height) => formatLengthNumber(height, units));
      return `${count} × ${[...lower, last].join(" + ")}`;
    })
    .join(", ");
}

function kindsOf(posts: readonly PostInPlace[]): { heightsMm: readonly number[]; count: number }[] {
  const kinds = new Map<string, { heightsMm: readonly number[]; count: number }>();
  for (const { heightsMm } of posts) {
    const key = heightsMm.join();
    kinds.set(key, { heightsMm, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

/** Every post height of a load and how many to lay out, lowest first. */
export function postTally(posts: readonly PostInPlace[]): [heightMm: number, count: number][] {
  const tally = new Map<number, number>();
  for (const post of posts) for (const height of post.heightsMm) tally.set(height, (tally.get(height) ?? 0) + 1);
  return [...tally].sort(([a], [b]) => a - b);
}

const WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** Small numbers in words. */
export const numberWord = (count: number): string => WORDS[count] ?? String(count);
