import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import type { WareRecord } from "../../../studio/records/ware-record.ts";

/** What a card says of a load. */
export interface LoadFacts {
  /** Pieces standing in it; null where it is not planned yet. */
  readonly placed: number | null;
  /** Pieces that were to go in. */
  readonly waiting: number;
  readonly leftOut: readonly { readonly ware: string; readonly count: number; readonly reason: string }[];
  readonly kinds: readonly FiringKind[];
  readonly cones: readonly string[];
  /** Days on which pieces standing in it are wanted, soonest first. */
  readonly due: readonly string[];
}

/**
 * Gathers what a card says.
 *
 * @param ware every batch: what a piece is fired for and when it is wanted is the batch's word, not the load's
 */
export function loadFacts(load: LoadRecord, ware: readonly WareRecord[]): LoadFacts {
  const batches = new Map(ware.map((batch) => [batch.id, batch]));
  const batchOf = new Map(load.sources.map((source) => [source.ware, batches.get(source.wareId)]));
  const standing = new Set(load.plan?.levels.flatMap(({ placements }) => placements.map((piece) => piece.ware)));
  const spoken = load.request.ware.filter(({ name }) => load.plan === null || standing.has(name));
  return {
    placed: load.plan?.levels.reduce((sum, level) => sum + level.placements.length, 0) ?? null,
    waiting: load.request.ware.reduce((sum, { count }) => sum + count, 0),
    leftOut: load.plan?.left.filter(({ count }) => count > 0) ?? [],
    kinds: unlike(spoken.map(({ name }) => batchOf.get(name)?.firingKind)),
    cones: unlike(spoken.map(({ cone }) => cone?.trim())),
    due: unlike(spoken.map(({ name }) => batchOf.get(name)?.dueOn)).sort(),
  };
}

const unlike = <Text extends string>(all: readonly (Text | null | undefined)[]): Text[] => [
  ...new Set(all.filter((text): text is Text => text !== null && text !== undefined && text !== "")),
];
