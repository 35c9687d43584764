import { formatLength, type LengthUnits } from "../../measures/length.ts";
import { postTally } from "../../sheets/post-words.ts";
import type { SheetLoad } from "../../sheets/sheet-load.ts";

/** What to lay out before anything goes in, by kind. */
export interface LayOut {
  readonly shelves: readonly string[];
  readonly posts: readonly string[];
  readonly ware: readonly string[];
}

/** Counts what the plan uses: `3 of 100 mm`, `6 espresso cup`. */
export function layOut({ scene }: SheetLoad, units: LengthUnits): LayOut {
  return {
    shelves: tally(scene.shelves.map(({ kind }) => kind.name)),
    posts: postTally(scene.posts).map(([heightMm, count]) => `${count} of ${formatLength(heightMm, units)}`),
    ware: tally(scene.pieces.map(({ ware }) => ware.name)),
  };
}

function tally(names: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${count} ${name}`);
}
