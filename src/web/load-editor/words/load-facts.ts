import type { LoadPlan } from "../../../loading/load-plan.ts";
import type { LoadRequest } from "../../../loading/load-request.ts";
import type { LoadState } from "../../../studio/records/load-record.ts";

const STATE_WORDS: Readonly<Record<LoadState, string>> = {
  planned: "Planned",
  loading: "Being loaded",
  loaded: "Loaded",
  fired: "Fired",
  unpacked: "Unpacked",
};

/**
 * A load at a glance: how far it has come, pieces in of those that waited, what it is worth, and where the planner has
 * found one, the most that could ever fit.
 */
export function factsOf(request: LoadRequest, plan: LoadPlan, state: LoadState): string[] {
  const worths = new Map(request.ware.map(({ name, value }) => [name, value]));
  const standing = plan.levels.flatMap(({ placements }) => placements);
  const waiting = request.ware.reduce((sum, { count }) => sum + count, 0);
  const worth = standing.reduce((sum, { ware }) => sum + (worths.get(ware) ?? 0), 0);
  const bound = plan.figures.valueBound;
  // Where every piece is worth one, worth is only another word for how many.
  const counts = request.ware.every(({ value }) => value === 1);
  return [
    STATE_WORDS[state],
    `${standing.length} of ${waiting} in`,
    ...(counts ? [] : [`worth ${tenth(worth)}`]),
    ...(typeof bound === "number" ? [boundWords(bound, counts)] : []),
  ];
}

const boundWords = (bound: number, counts: boolean): string =>
  counts ? `at most ${Math.floor(bound + 1e-6)} could ever fit` : `at most worth ${tenth(bound)} could ever fit`;

const tenth = (value: number): number => Math.round(value * 10) / 10;
