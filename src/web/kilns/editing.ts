import type { LengthUnits } from "../../measures/length.ts";
import type { KilnDraft } from "./kiln-draft.ts";

/** What every part of the kiln's page is given. */
export interface PartProps {
  readonly draft: KilnDraft;
  readonly units: LengthUnits;
  readonly change: (change: (draft: KilnDraft) => KilnDraft) => void;
  /** What is wrong with a field of the draft, in words: `furniture.shelves[0].name`. */
  readonly problemAt: (path: string) => string | undefined;
}

/** A list with one thing changed, or without it where `change` gives null. */
export const withOne = <Thing>(
  list: readonly Thing[],
  index: number,
  change: (thing: Thing) => Thing | null,
): Thing[] =>
  list.flatMap((thing, i) => {
    if (i !== index) return [thing];
    const next = change(thing);
    return next === null ? [] : [next];
  });
