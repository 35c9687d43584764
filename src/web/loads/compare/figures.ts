import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import { shelfMiddle } from "../../../loading/solids/furniture-solids.ts";

/** What is held against each other of several ways to load the same. */
export interface WayFigures {
  readonly placed: number;
  readonly waiting: number;
  readonly worth: number;
  /** Of the tallest piece that stands in it; null in an empty load. */
  readonly tallestMm: number | null;
  /** For each level from the bottom, how much of its shelf ware stands on, seen from above, handles left out; 0 to 1. */
  readonly fillByLevel: readonly number[];
  readonly leftOut: readonly { readonly ware: string; readonly count: number }[];
}

/**
 * Works the figures out of the plan as it stands, whoever made or changed it.
 *
 * @param worthOf what each kind is worth: the same for all ways, whatever each was planned to bring most of
 */
export function wayFigures(request: LoadRequest, plan: LoadPlan, worthOf: ReadonlyMap<string, number>): WayFigures {
  const kinds = new Map(request.ware.map((ware) => [ware.name, ware]));
  const shelves = new Map(request.furniture.shelves.map((shelf) => [shelf.name, shelfMiddle(shelf).areaMm2]));
  const standing = plan.levels.flatMap(({ placements }) => placements.flatMap(({ ware }) => kinds.get(ware) ?? []));
  return {
    placed: standing.length,
    waiting: request.ware.reduce((sum, { count }) => sum + count, 0),
    worth: standing.reduce((sum, { name, value }) => sum + (worthOf.get(name) ?? value), 0),
    tallestMm: standing.length === 0 ? null : Math.max(...standing.map(({ heightMm }) => heightMm)),
    fillByLevel: plan.levels.map(({ shelf, placements }) => {
      const covered = placements.reduce((sum, { ware }) => sum + discMm2(kinds.get(ware)?.diameterMm ?? 0), 0);
      return covered / (shelves.get(shelf) ?? Number.POSITIVE_INFINITY);
    }),
    leftOut: plan.left.filter(({ count }) => count > 0).map(({ ware, count }) => ({ ware, count })),
  };
}

const discMm2 = (diameterMm: number): number => (Math.PI * diameterMm ** 2) / 4;
