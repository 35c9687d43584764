import { sameValue } from "../history/same-value.ts";
import type { WareRecord } from "../records/ware-record.ts";
import { listed } from "./in-words.ts";

/** What a batch's fields are called; those of `ware` and of the record have no name in common. */
const FIELDS: Readonly<Record<string, string>> = {
  name: "the name",
  count: "the count",
  diameterMm: "the width",
  heightMm: "the height",
  handle: "the handle",
  spout: "the spout",
  profile: "the outline",
  cookie: "the cookie",
  form: "the form",
  glaze: "the glaze",
  glazeId: "the glaze",
  cone: "the cone",
  massKg: "the mass",
  value: "what firing it is worth",
  mustFire: "whether it must go in",
  stage: "the stage",
  firingKind: "the firing it waits for",
  dueOn: "the due day",
  ownerNote: "the note",
  clayBodyId: "the clay body",
};

/** More than so many are not named one by one. */
const NAMED = 3;

/** Batches as they were and as they are, in a sentence: "Changed the due day of espresso cup". */
export function changedInWords(
  changes: readonly { readonly before: WareRecord; readonly after: WareRecord }[],
): string {
  const [first] = changes;
  const isOne = changes.length === 1 && first !== undefined;
  const batches = isOne ? first.before.ware.name : `${changes.length} batches`;
  const fields = new Set(changes.flatMap(({ before, after }) => fieldsChanged(before, after)));
  // An outline goes with the size: that it was stretched needs no words.
  if (fields.has("diameterMm") || fields.has("heightMm")) fields.delete("profile");
  const [only] = fields;
  if (only === undefined) return `Left ${batches} as ${isOne ? "it was" : "they were"}`;
  if (fields.size === 1 && isOne && only === "name") return `Renamed ${batches} to ${first.after.ware.name}`;
  const stages = new Set(changes.map(({ after }) => after.stage));
  if (fields.size === 1 && only === "stage" && stages.size === 1) return `Marked ${batches} as ${[...stages][0]}`;
  const words = [...new Set([...fields].map((field) => FIELDS[field] ?? field))];
  const named = words.length > NAMED ? [...words.slice(0, NAMED - 1), "more"] : words;
  return `Changed ${listed(named)} of ${batches}`;
}

function fieldsChanged(before: WareRecord, after: WareRecord): string[] {
  const flat = ({ ware, changedAt: _, ...record }: WareRecord): Record<string, unknown> => ({ ...ware, ...record });
  const [was, is] = [flat(before), flat(after)];
  return Object.keys(FIELDS).filter((name) => !sameValue(was[name] ?? null, is[name] ?? null));
}
