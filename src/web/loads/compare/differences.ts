import type { LoadPlan } from "../../../loading/load-plan.ts";

/** How many of each kind stand in a plan. */
export function takenBy(plan: LoadPlan): Map<string, number> {
  const taken = new Map<string, number>();
  for (const { placements } of plan.levels) {
    for (const { ware } of placements) taken.set(ware, (taken.get(ware) ?? 0) + 1);
  }
  return taken;
}

/**
 * What one load takes that another leaves, and the other way round, in words: "Takes the serving platter and 2 × tumbler
 * more. Leaves one more breakfast mug." Names are hers, so they are neither bent nor guessed at.
 *
 * @param plan the one to be told
 * @param other the one it is held against
 */
export function differenceInWords(plan: LoadPlan, other: LoadPlan): string {
  const [mine, theirs] = [takenBy(plan), takenBy(other)];
  const more: string[] = [];
  const fewer: string[] = [];
  for (const ware of new Set([...mine.keys(), ...theirs.keys()])) {
    const [here, there] = [mine.get(ware) ?? 0, theirs.get(ware) ?? 0];
    if (here > there) more.push(inWords(ware, here, there));
    if (there > here) fewer.push(inWords(ware, there, here));
  }
  const sentences: string[] = [];
  if (more.length > 0) sentences.push(`Takes ${listed(more)}.`);
  if (fewer.length > 0) sentences.push(`Leaves ${listed(fewer)}.`);
  if (sentences.length > 0) return sentences.join(" ");
  const levels = plan.levels.length - other.levels.length;
  if (levels === 0) return "The same pieces, standing otherwise.";
  return `The same pieces on ${Math.abs(levels)} ${Math.abs(levels) === 1 ? "level" : "levels"} ${levels > 0 ? "more" : "fewer"}.`;
}

/** "the platter" where it is the only one; "2 × mug" where none stands in the other; else "2 × mug more". */
function inWords(ware: string, more: number, fewer: number): string {
  if (fewer === 0) return more === 1 ? `the ${ware}` : `${more}\u00a0×\u00a0${ware}`;
  return more - fewer === 1 ? `one more ${ware}` : `${more - fewer}\u00a0×\u00a0${ware} more`;
}

/** Names may hold commas of their own ("mug, moss"): then semicolons keep them apart. */
function listed(all: readonly string[]): string {
  const comma = all.some((each) => each.includes(",")) ? "; " : ", ";
  return all.length === 1 ? (all[0] as string) : `${all.slice(0, -1).join(comma)} and ${all.at(-1)}`;
}
