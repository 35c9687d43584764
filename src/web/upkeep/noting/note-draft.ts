import type { UpkeepRecord, UpkeepWork } from "../../../studio/records/upkeep-record.ts";

/** An entry while it is typed. */
export interface NoteDraft {
  readonly what: UpkeepWork;
  readonly at: string | null;
  readonly ohms: readonly (number | null)[];
  readonly count: number | null;
  readonly note: string;
}

/** Where nothing was measured before. */
const USUAL_CIRCUITS = 3;

/** A new entry: as many circuits as were measured last. */
export function newNote(what: UpkeepWork, book: readonly UpkeepRecord[], now: string): NoteDraft {
  const circuits = lastOhms(book)?.length ?? USUAL_CIRCUITS;
  return { what, at: now, ohms: new Array<null>(circuits).fill(null), count: 1, note: "" };
}

/** The elements' resistances as they were measured last; null where they never were. */
export function lastOhms(book: readonly UpkeepRecord[]): readonly number[] | null {
  const measured = book.filter(({ what, ohms }) => what === "element resistance" && ohms !== undefined);
  return measured.sort((a, b) => (a.at < b.at ? 1 : -1))[0]?.ohms ?? null;
}

/** What the command takes, or in words what is missing yet. */
export function inputOf(draft: NoteDraft): { readonly input: object } | { readonly missing: string } {
  const { what, at, ohms, count, note } = draft;
  if (at === null) return { missing: "When was it?" };
  const words = note.trim();
  if (what === "element resistance") {
    if (ohms.length === 0 || ohms.some((each) => each === null)) {
      return { missing: "Every circuit needs its resistance; take out those there are not." };
    }
    return { input: { at, what, ohms, note: words } };
  }
  if (what === "other" && words === "") return { missing: "What was it? A few words will do." };
  if (!what.startsWith("shelf ")) return { input: { at, what, note: words } };
  return count === null ? { missing: "How many shelves?" } : { input: { at, what, count, note: words } };
}
