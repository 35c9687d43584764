import type { Shelf } from "../../kiln/furniture.ts";
import { type ClearanceRules, GLAZE_WARE_RULES } from "../../loading/clearance-rules.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import type { KilnRecord } from "../../studio/records/kiln-record.ts";

/** What of a kiln she edits: its measures, its furniture, the clearances she keeps in it. */
export type KilnDraft = Pick<KilnRecord, "kiln" | "furniture" | "rules">;

/** What of a draft differs from what is kept: just that goes into the command, so that two changes do not undo each other. */
export function changedParts(kept: KilnDraft, draft: KilnDraft): Partial<KilnDraft> | null {
  const parts = (["kiln", "furniture", "rules"] as const).filter(
    (name) => JSON.stringify(kept[name]) !== JSON.stringify(draft[name]),
  );
  return parts.length === 0 ? null : Object.fromEntries(parts.map((name) => [name, draft[name]]));
}

/** What keeps a draft from being a kiln that loads can be planned for, or null where nothing does. */
export function draftFault({ kiln, furniture, rules }: KilnDraft): BadInput | null {
  try {
    readLoadRequest({ format: "load-request/1", kiln, furniture, rules, ware: [] });
    return null;
  } catch (error) {
    if (error instanceof BadInput) return error;
    throw error;
  }
}

/** A name no other has: `shelf`, `shelf 2`, `shelf 3`. */
export function freeName(wanted: string, taken: readonly { readonly name: string }[]): string {
  const names = new Set(taken.map(({ name }) => name));
  const base = wanted.replace(/ \d+$/, "");
  if (!names.has(wanted)) return wanted;
  for (let i = 2; ; i++) if (!names.has(`${base} ${i}`)) return `${base} ${i}`;
}

/** The same shelf in another shape, as wide as it was. */
export function reshaped(shelf: Shelf, shape: Shelf["shape"]): Shelf {
  const { name, thicknessMm, count } = shelf;
  const across =
    "diameterMm" in shelf ? shelf.diameterMm : "acrossFlatsMm" in shelf ? shelf.acrossFlatsMm : shelf.widthMm;
  const of = { name, thicknessMm, count };
  if (shape === "disc" || shape === "half-disc") return { ...of, shape, diameterMm: across };
  if (shape === "polygon") return { ...of, shape, sides: 8, acrossFlatsMm: across };
  return { ...of, shape, widthMm: across, lengthMm: across };
}

/** The draft with a clearance of her own; the usual is not written down, so that it stays the usual. */
export function withRule(draft: KilnDraft, rule: keyof ClearanceRules, mm: number | null): KilnDraft {
  const { [rule]: _, ...others } = draft.rules;
  return { ...draft, rules: mm === null || mm === GLAZE_WARE_RULES[rule] ? others : { ...others, [rule]: mm } };
}
