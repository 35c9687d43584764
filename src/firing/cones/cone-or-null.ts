import { BadInput } from "../../measures/bad-input.ts";
import type { ConeName } from "./cone.ts";
import { parseCone } from "./parse-cone.ts";

/** The cone that a free text means, as `parseCone` reads it; null where it is empty or means none. */
export function coneOrNull(text: string | null | undefined): ConeName | null {
  // Most ware in a long list asks for none: no error is made for each.
  if (!text?.trim()) return null;
  try {
    return parseCone(text);
  } catch (error) {
    if (error instanceof BadInput) return null;
    throw error;
  }
}
