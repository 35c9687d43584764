import { type ConeName, conePlace } from "../../firing/cones/cone.ts";

/** A clay body or glaze while it is written down. */
export interface MaterialDraft {
  readonly name: string;
  /** "" where no cone is said. */
  readonly coolest: ConeName | "";
  readonly hottest: ConeName | "";
  /** Of a glaze alone. */
  readonly runs: boolean;
  readonly note: string;
}

export const EMPTY_MATERIAL: MaterialDraft = { name: "", coolest: "", hottest: "", runs: false, note: "" };

/** What is kept of a clay body or glaze. */
export interface MaterialFields {
  readonly name: string;
  readonly cones: { readonly coolest: ConeName; readonly hottest: ConeName } | null;
  readonly note: string;
}

/** The draft of one that is kept. */
export const materialDraft = ({
  name,
  cones,
  note,
  runs = false,
}: MaterialFields & { runs?: boolean }): MaterialDraft => ({
  name,
  coolest: cones?.coolest ?? "",
  hottest: cones?.hottest ?? "",
  runs,
  note,
});

/** What keeps a draft from being kept, in words; null where nothing does. */
export function problemOf(draft: MaterialDraft, namesTaken: ReadonlySet<string>): string | null {
  const name = draft.name.trim();
  if (name === "") return "It needs a name.";
  if (namesTaken.has(name.toLowerCase())) return `There is one called ${name} already.`;
  return null;
}

/**
 * What is kept. One cone alone is both ends, and cones in the wrong order are put in the right one: there is only one
 * thing she can have meant.
 */
export function materialFields({ name, coolest, hottest, note }: MaterialDraft): MaterialFields {
  const [one, other] = [coolest || hottest, hottest || coolest];
  const words = { name: name.trim(), note: note.trim() };
  if (one === "" || other === "") return { ...words, cones: null };
  const inOrder = conePlace(one) <= conePlace(other);
  return { ...words, cones: inOrder ? { coolest: one, hottest: other } : { coolest: other, hottest: one } };
}
