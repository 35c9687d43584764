import { formatLengthNumber, type LengthUnits } from "../../../measures/length.ts";
import type { FormName } from "../../../ware/forms.ts";
import { FORM_WORDS } from "../words/ware-words.ts";

/** As far as a size is typed. */
export interface TypedSize {
  readonly acrossMm: number | null;
  /** A box's or tile's shorter side. */
  readonly shorterMm: number | null;
  readonly heightMm: number | null;
}

/** True of forms that are measured along two sides. */
export const isCornered = (form: FormName | null): boolean => form === "box" || form === "tile";

/**
 * What a batch could be called: "Mug 85 × 95", "Box 140 × 100 × 90", in her units. Where that name is taken, it is
 * numbered: "Mug 85 × 95, 2".
 *
 * @param taken names that other batches have
 */
export function suggestName(
  form: FormName | null,
  size: TypedSize,
  units: LengthUnits,
  taken: ReadonlySet<string>,
): string {
  const word = form === null || form === "other" ? "Piece" : FORM_WORDS[form];
  const sides = isCornered(form) ? [size.acrossMm, size.shorterMm ?? size.acrossMm] : [size.acrossMm];
  const measures = [...sides, size.heightMm].filter((mm) => mm !== null).map((mm) => formatLengthNumber(mm, units));
  const unit = units === "inches" && measures.length > 0 ? " in" : "";
  const name = measures.length === 0 ? word : `${word} ${measures.join(" × ")}${unit}`;
  return freeName(name, taken);
}

/** The name itself where it is free, else the first number after it that is. */
export function freeName(name: string, taken: ReadonlySet<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number += 1) free = `${name}, ${number}`;
  return free;
}
