import { formatLength, type LengthUnits } from "../../measures/length.ts";
import { postTally } from "../../sheets/post-words.ts";
import type { SheetLoad } from "../../sheets/sheet-load.ts";
import { countOf } from "../../studio/commands/in-words.ts";

/** What to lay out before anything goes in, by kind. */
export interface LayOut {
  readonly shelves: readonly string[];
  readonly posts: readonly string[];
  readonly ware: readonly string[];
}

/** Counts what the plan uses: `2 × full shelf`, `3 of 100 mm`, `6 espresso cups`. */
export function layOut({ scene }: SheetLoad, units: LengthUnits): LayOut {
  return {
    shelves: tally(scene.shelves.map(({ kind }) => kind.name)).map(([name, count]) => `${count} × ${name}`),
    posts: postTally(scene.posts).map(([heightMm, count]) => `${count} of ${formatLength(heightMm, units)}`),
    ware: tally(scene.pieces.map(({ ware }) => ware.name)).map(([name, count]) => countOf(count, name)),
  };
}

function tally(names: readonly string[]): [name: string, count: number][] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts];
}
