import type { FiringOffer } from "./firing-offers.ts";

/** How many of each batch are to go in; none where the batch is not named. */
export type Choice = Readonly<Record<string, number>>;

/**
 * What is chosen before she changes anything: the batches she came with where they belong to this firing, else all that
 * ask for it.
 *
 * @param wanted batches she chose before, on the list of what waits
 */
export function firstChoice(offers: readonly FiringOffer[], offer: FiringOffer, wanted: ReadonlySet<string>): Choice {
  const all = [...offer.batches, ...offer.along, ...offers.flatMap(({ batches }) => batches)];
  const mine = all.filter(({ id }) => wanted.has(id));
  const belongs = offer.batches.some(({ id }) => wanted.has(id));
  return Object.fromEntries((belongs ? mine : offer.batches).map(({ id, ware }) => [id, ware.count]));
}

/** The choice with another count of one batch. */
export function withCount(choice: Choice, id: string, count: number): Choice {
  const { [id]: _, ...others } = choice;
  return count > 0 ? { ...others, [id]: count } : others;
}

export const chosenPieces = (choice: Choice): number => Object.values(choice).reduce((sum, count) => sum + count, 0);

/** The choice as the command takes it: the batches, and how many of each. */
export const countsOf = (choice: Choice): { wareIds: string[]; counts: Choice } => ({
  wareIds: Object.keys(choice),
  counts: choice,
});
