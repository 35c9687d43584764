import { formatLength, type LengthUnits } from "../../../measures/length.ts";
import { readLengthText } from "../../parts/length-text.ts";
import type { ReadText } from "../../parts/number-text.ts";

/** A place along one direction as its field shows it: "120 mm", "−35 mm". */
export const signedLengthText = (mm: number, units: LengthUnits): string =>
  mm < 0 ? `−${formatLength(-mm, units)}` : formatLength(mm, units);

/** Reads such a place: a length in any unit, with a minus where it goes the other way. Nothing typed is no place. */
export function readSignedLength(text: string, units: LengthUnits): ReadText<number> {
  const [, sign, rest] = /^\s*([-−–+]?)(.*)$/s.exec(text) as RegExpExecArray;
  const read = readLengthText(rest ?? "", units);
  if (read.value === null) return { value: null, problem: read.problem ?? "A length is wanted here." };
  return { value: sign === "" || sign === "+" ? read.value : -read.value, problem: null };
}
