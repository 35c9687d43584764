import { BadInput } from "../../measures/bad-input.ts";
import { formatLength, type LengthUnits, parseLengthMm } from "../../measures/length.ts";
import type { ReadText } from "./number-text.ts";

export interface LengthLimits {
  readonly minMm?: number | undefined;
  readonly maxMm?: number | undefined;
}

/** A length as its field shows it, in her units; nothing for nothing. */
export const lengthText = (mm: number | null, units: LengthUnits): string =>
  mm === null ? "" : formatLength(mm, units);

/**
 * Reads what was typed in a field for lengths. A bare number is in her units; any unit may be written.
 *
 * @returns millimetres; null with no problem where nothing was typed
 */
export function readLengthText(
  text: string,
  units: LengthUnits,
  { minMm, maxMm }: LengthLimits = {},
): ReadText<number> {
  if (text.trim() === "") return { value: null, problem: null };
  try {
    const value = parseLengthMm(text, units === "inches" ? "in" : "mm");
    if (minMm !== undefined && value < minMm)
      return { value: null, problem: `At least ${formatLength(minMm, units)}.` };
    if (maxMm !== undefined && value > maxMm) return { value: null, problem: `At most ${formatLength(maxMm, units)}.` };
    return { value, problem: null };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    const such = units === "inches" ? "3 1/2 in or 9 cm" : "90, 9 cm or 3 1/2 in";
    return { value: null, problem: `“${text.trim()}” is not a length. Type such as ${such}.` };
  }
}
