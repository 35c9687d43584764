import type { LoadPlan } from "../../loading/load-plan.ts";

/** A level as it is told beside the picture. */
export interface LevelInWords {
  /** From 0 at the bottom, as in the plan. */
  readonly level: number;
  readonly topMm: number;
  readonly pieces: number;
  /** Each kind on it, most first, with the placements of that kind. */
  readonly kinds: readonly { readonly ware: string; readonly placements: readonly number[] }[];
}

/** What stands where, from the top level down, as one unloads a kiln. */
export function loadInWords(plan: LoadPlan): LevelInWords[] {
  return plan.levels
    .map((level, index) => {
      const kinds = new Map<string, number[]>();
      level.placements.forEach(({ ware }, placement) => {
        kinds.set(ware, [...(kinds.get(ware) ?? []), placement]);
      });
      return {
        level: index,
        topMm: level.topMm,
        pieces: level.placements.length,
        kinds: [...kinds]
          .map(([ware, placements]) => ({ ware, placements }))
          .sort((a, b) => b.placements.length - a.placements.length || a.ware.localeCompare(b.ware)),
      };
    })
    .reverse();
}
