import { type LengthUnits, lengthsInUnits } from "../../measures/length.ts";

/** A refusal's facts: a `BadInput` of this machine's, or the server's answer. */
export interface Fault {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** The field a fault belongs to, as the editor names its fields: without what the server put before it (`kiln "k1".`). */
export const fieldOf = (fault: Fault): string => fault.path.replace(/^kiln "[^"]*"\.?/, "");

/** The fault in words at a field, or undefined where it belongs to another. */
export function problemAt(fault: Fault | null, path: string, units: LengthUnits): string | undefined {
  if (fault === null || fieldOf(fault) !== path) return undefined;
  return faultWords(fault, units);
}

/** `500 mm will not do: a height inside the chamber, at most its depth of 460 mm.` */
export function faultWords(fault: Fault, units: LengthUnits): string {
  const inMm = fault.path.endsWith("Mm");
  const say = (words: string): string => lengthsInUnits(inMm ? withUnit(words) : words, units);
  const found = fault.found === "nothing" || fault.found === "no text" ? "Nothing here" : say(fault.found);
  return `${found} will not do: ${say(fault.expected)}.`;
}

/** The formats' own errors leave the unit to the field's name; on a screen every number has one. */
const withUnit = (words: string): string =>
  words
    .replace(/^a number of millimetres,/, "a length of")
    .replace(/^a number of millimetres/, "a length")
    .replaceAll(/(?<![\w.])(-?\d+(?:\.\d+)?)(?!\s?(?:mm|cm)\b)(?![\w.]*\d)/g, "$1 mm");
