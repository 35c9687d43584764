import type { LoadRecord } from "../records/load-record.ts";

/** Pieces of a batch that stand in one load's plan, and so wait for no other. */
export interface PromisedTo {
  readonly loadId: string;
  readonly loadName: string;
  readonly count: number;
}

/** How many of a batch still wait, and where the others are promised. */
export interface Waiting {
  readonly waits: number;
  readonly promised: readonly PromisedTo[];
}

/**
 * Which pieces of which batch stand in loads that are not unpacked yet. Alternatives of one load are ways to fire the
 * same pieces: they promise them once, as many as the fullest of them; and once one of them is being loaded, only that
 * one counts.
 *
 * @param loads every load, unpacked ones too: they say which of several alternatives was fired
 * @returns by the batch's id
 */
export function promisedPieces(loads: readonly LoadRecord[]): Map<string, PromisedTo[]> {
  const promised = new Map<string, PromisedTo[]>();
  for (const alternatives of alternativesTogether(loads)) {
    const begun = alternatives.filter(({ state }) => state !== "planned");
    const counting = (begun.length > 0 ? begun : alternatives).filter(({ state }) => state !== "unpacked");
    for (const [wareId, most] of fullest(counting)) promised.set(wareId, [...(promised.get(wareId) ?? []), most]);
  }
  return promised;
}

/** How many of a batch wait for a load, given what is promised of it. */
export function waitingOf(count: number, promised: readonly PromisedTo[] = []): Waiting {
  const taken = promised.reduce((sum, each) => sum + each.count, 0);
  return { waits: Math.max(0, count - taken), promised };
}

/** How many of each batch stand in a load's plan, by the batch's id. */
export function standingPieces({ plan, sources }: Pick<LoadRecord, "plan" | "sources">): Map<string, number> {
  const wareIds = new Map(sources.map(({ ware, wareId }) => [ware, wareId]));
  const standing = new Map<string, number>();
  for (const { placements } of plan?.levels ?? []) {
    for (const { ware } of placements) {
      const wareId = wareIds.get(ware);
      if (wareId !== undefined) standing.set(wareId, (standing.get(wareId) ?? 0) + 1);
    }
  }
  return standing;
}

/** A load's id or, for an alternative, that of the load it is an alternative of: what they all share. */
export const alternativesId = ({ id, alternativeOf }: Pick<LoadRecord, "id" | "alternativeOf">): string =>
  alternativeOf ?? id;

function alternativesTogether(loads: readonly LoadRecord[]): LoadRecord[][] {
  const together = new Map<string, LoadRecord[]>();
  for (const load of loads) {
    const id = alternativesId(load);
    together.set(id, [...(together.get(id) ?? []), load]);
  }
  return [...together.values()];
}

function fullest(loads: readonly LoadRecord[]): Map<string, PromisedTo> {
  const most = new Map<string, PromisedTo>();
  for (const load of loads) {
    for (const [wareId, count] of standingPieces(load)) {
      if (count > (most.get(wareId)?.count ?? 0)) most.set(wareId, { loadId: load.id, loadName: load.name, count });
    }
  }
  return most;
}
