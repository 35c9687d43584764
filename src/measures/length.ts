import { BadInput } from "./bad-input.ts";

/** The units a potter may read lengths in. */
export type LengthUnits = "metric" | "inches";

const MM_PER_UNIT: Readonly<Record<string, number>> = {
  mm: 1,
  millimetre: 1,
  millimetres: 1,
  millimeter: 1,
  millimeters: 1,
  cm: 10,
  centimetre: 10,
  centimetres: 10,
  centimeter: 10,
  centimeters: 10,
  m: 1000,
  in: 25.4,
  ins: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  ft: 304.8,
  foot: 304.8,
  feet: 304.8,
  "'": 304.8,
};

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

// A whole number with or without a fraction after it, or a fraction alone; then a unit.
const PART = /^(?:(\d+(?:\.\d+)?|\.\d+)(?!\d*\/)(?:[\s-]+(\d+)\/(\d+))?|(\d+)\/(\d+))\s*([a-z"']+)?\s*/;

/**
 * Reads a length as a potter types it: `3 1/2 in`, `3½"`, `3-1/2 inches`, `1' 3"`, `9 cm`, `9,5 cm`, `90mm`.
 *
 * @param text what was typed
 * @param bareUnit the unit meant by a bare number, or null where a unit must be given
 * @param path the field, named in the error
 * @returns millimetres, zero or more
 * @throws BadInput where the text is not a length, or a bare number comes where a unit is needed
 */
export function parseLengthMm(text: string, bareUnit: "mm" | "cm" | "in" | null = null, path = "length"): number {
  const refuse = (): never => {
    throw new BadInput({
      code: "not-a-length",
      path,
      found: text.trim() === "" ? "nothing" : `"${text.trim()}"`,
      expected:
        bareUnit === null
          ? "a length with its unit, such as 90 mm, 9 cm or 3 1/2 in"
          : "a length, such as 90 mm, 9 cm or 3 1/2 in",
    });
  };
  let rest = plainText(text);
  if (rest === "") return refuse();
  let mm = 0;
  let smallestUnit = Number.POSITIVE_INFINITY;
  while (rest !== "") {
    const match = PART.exec(rest);
    if (!match) return refuse();
    const whole = Number(match[1] ?? 0);
    const top = match[2] ?? match[4];
    const bottom = match[3] ?? match[5];
    if (top !== undefined && match[1]?.includes(".")) return refuse();
    // "31/2" is three and a half to nobody: a whole number before a fraction needs a space or a dash.
    if (Number(bottom) === 0 || (match[4] !== undefined && Number(top) >= Number(bottom))) return refuse();
    const fraction = top === undefined ? 0 : Number(top) / Number(bottom);
    const unit = match[6] ?? (smallestUnit === Number.POSITIVE_INFINITY ? bareUnit : null);
    const scale = unit === null ? undefined : MM_PER_UNIT[unit];
    // Parts go from the larger unit to the smaller: feet, then inches.
    if (scale === undefined || scale >= smallestUnit) return refuse();
    smallestUnit = scale;
    mm += (whole + fraction) * scale;
    rest = rest.slice(match[0].length);
  }
  return mm;
}

function plainText(text: string): string {
  let plain = text.trim().toLowerCase();
  for (const [sign, fraction] of Object.entries(FRACTIONS)) plain = plain.replaceAll(sign, ` ${fraction}`);
  return plain
    .replaceAll(/[″”“]/g, '"')
    .replaceAll(/[′’‘]/g, "'")
    .replaceAll("''", '"')
    .replaceAll("⁄", "/")
    .replaceAll(/(\d),(\d{1,2})(?!\d)/g, "$1.$2")
    .replaceAll(/([a-z])\.(?=\s|$)/g, "$1")
    .trim();
}

/**
 * Prints a length in her units.
 *
 * @param mm millimetres
 * @param units `metric`: whole millimetres, as posts are sold; `inches`: to the sixteenth
 */
export const formatLength = (mm: number, units: LengthUnits): string =>
  `${formatLengthNumber(mm, units)} ${units === "inches" ? "in" : "mm"}`;

/** The same without its unit, for a drawing that names the unit once. */
export function formatLengthNumber(mm: number, units: LengthUnits): string {
  if (units === "inches") return inchesText(mm);
  const rounded = Math.round(mm);
  return String(rounded === 0 ? 0 : rounded);
}

/**
 * A sentence that speaks of millimetres or centimetres, in her units: "too tall by 18 mm" as "too tall by 11/16 in".
 *
 * @param text any text; numbers without a metric unit stay as they are
 */
export function lengthsInUnits(text: string, units: LengthUnits): string {
  if (units === "metric") return text;
  return text.replaceAll(/(-?\d+(?:\.\d+)?) (mm|cm)\b/g, (_, number: string, unit: string) =>
    formatLength(Number(number) * (unit === "cm" ? 10 : 1), units),
  );
}

function inchesText(mm: number): string {
  const sign = mm < 0 ? "-" : "";
  const sixteenths = Math.round((Math.abs(mm) / 25.4) * 16);
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  if (top === 0) return whole === 0 ? "0" : `${sign}${whole}`;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole === 0 ? "" : `${whole} `}${top}/${bottom}`;
}
