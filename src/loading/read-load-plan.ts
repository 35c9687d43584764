import { BadInput, shown } from "../measures/bad-input.ts";
import { readBySchema } from "../measures/read-schema.ts";
import { type LoadPlan, LoadPlanSchema } from "./load-plan.ts";
import type { LoadRequest } from "./load-request.ts";

/**
 * Checks a load plan read from JSON: its shape, and that every name in it is in the request. Whether the rules are
 * kept is the checker's question, not this one's.
 *
 * @throws BadInput naming the field, what was found and what would do
 */
export function readLoadPlan(json: unknown, request: LoadRequest): LoadPlan {
  const file = readBySchema(LoadPlanSchema, json);
  const shelves = request.furniture.shelves.map((shelf) => shelf.name);
  const wares = request.ware.map((ware) => ware.name);
  file.levels.forEach((level, i) => {
    known(level.shelf, shelves, `levels[${i}].shelf`, "a shelf");
    level.placements.forEach((placement, j) => {
      known(placement.ware, wares, `levels[${i}].placements[${j}].ware`, "a piece");
    });
  });
  file.left.forEach((left, i) => {
    known(left.ware, wares, `left[${i}].ware`, "a piece");
  });
  return { format: file.format, levels: file.levels, left: file.left, figures: { ...file.figures } };
}

function known(name: string, names: readonly string[], path: string, kind: string): void {
  if (names.includes(name)) return;
  throw new BadInput({
    code: "unknown-name",
    path,
    found: shown(name),
    expected: `${kind} of the request: ${listed(names)}`,
  });
}

/** Names for a sentence: the first of them where there are many. */
function listed(names: readonly string[]): string {
  const first = names.slice(0, MOST_NAMED).map((each) => `"${each}"`);
  const more = names.length - first.length;
  return first.join(", ") + (more > 0 ? ` or one of ${more} more` : "");
}

const MOST_NAMED = 12;
