import { halfSpaces } from "./half-spaces.ts";
import type { HandbookResult } from "./handbook-result.ts";
import { radiating } from "./radiating.ts";
import { slabs } from "./slabs.ts";

/** Every handbook problem, through the solver and by its closed form. */
export function handbookCases(): HandbookResult[] {
  return [...halfSpaces(), ...slabs(), ...radiating()];
}
