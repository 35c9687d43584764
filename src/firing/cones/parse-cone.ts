import { BadInput } from "../../measures/bad-input.ts";
import { CONES, type ConeName, isCone } from "./cone.ts";

/** "cone", "c/", "^", "Δ" or "#" may stand before the number. */
const BEFORE_THE_NUMBER = /^(?:cone|c\/|c|\^|Δ|∆|△|#|no\.?)?\s*/iu;

/**
 * Reads a cone as a potter writes it: `6`, `cone 6`, `^6`, `Δ06`, `05½`, `5 1/2`, and `o6` with a letter for the zero.
 *
 * @param text what was written
 * @param path the field, named in the error
 * @throws BadInput where no cone of the table is meant; 6 and 06 are never taken for one another
 */
export function parseCone(text: string, path = "cone"): ConeName {
  const number = text
    .trim()
    .replace(BEFORE_THE_NUMBER, "")
    .replace(/^o(?=\d)/i, "0")
    .replace(/\s*(?:½|\s1\/2|,5)$/u, ".5");
  if (isCone(number)) return number;
  throw new BadInput({
    code: "not-a-cone",
    path,
    found: text.trim() === "" ? "nothing" : `"${text.trim()}"`,
    expected: nearest(number),
  });
}

function nearest(number: string): string {
  const value = Number(number);
  const all = `a cone from ${CONES[0]} (coolest) to ${CONES.at(-1)} (hottest), such as 06, 05.5 or 6`;
  if (number === "" || !Number.isFinite(value) || Number.isInteger(value)) return all;
  const zero = number.startsWith("0") ? "0" : "";
  const [below, above] = [`${zero}${Math.floor(value)}`, `${zero}${Math.ceil(value)}`];
  return isCone(below) && isCone(above) ? `${below} or ${above}: the only half cones are 05.5 and 5.5` : all;
}
