import { type ConeName, conePlace } from "../../../firing/cones/cone.ts";
import { FIRING_KINDS, type FiringKind } from "../../../firing/cones/firing-kind.ts";
import type { WaitingBatch } from "./waiting-batch.ts";

/** Batches that ask for the same firing: the same kind, to the same cone. */
export interface FiringGroup {
  readonly kind: FiringKind | null;
  readonly cone: ConeName | null;
  readonly ids: readonly string[];
  /** Those of which some stand in no load yet. */
  readonly freeIds: readonly string[];
  readonly pieces: number;
  /** Pieces that stand in no load yet. */
  readonly freePieces: number;
  readonly latePieces: number;
  /** Wanted within seven days. */
  readonly soonPieces: number;
}

/** What waits, by the firing it waits for: the one with most that is late first, then most due soon, then the fullest. */
export function firingGroups(batches: readonly WaitingBatch[]): FiringGroup[] {
  const groups = new Map<
    string,
    { -readonly [Field in keyof FiringGroup]: FiringGroup[Field] } & { ids: string[]; freeIds: string[] }
  >();
  for (const { record, kind, cone, due, inLoads } of batches) {
    if (record.stage === "finished") continue;
    const key = `${kind}/${cone}`;
    const group = groups.get(key) ?? {
      kind,
      cone,
      ids: [],
      freeIds: [],
      pieces: 0,
      freePieces: 0,
      latePieces: 0,
      soonPieces: 0,
    };
    const { count } = record.ware;
    group.ids.push(record.id);
    if (inLoads < count) group.freeIds.push(record.id);
    group.pieces += count;
    group.freePieces += Math.max(0, count - inLoads);
    if (due === "late") group.latePieces += count;
    if (due === "week") group.soonPieces += count;
    groups.set(key, group);
  }
  const coneOrder = (cone: ConeName | null): number => (cone === null ? -1 : conePlace(cone));
  const kindOrder = (kind: FiringKind | null): number => (kind === null ? -1 : FIRING_KINDS.indexOf(kind));
  return [...groups.values()].sort(
    (a, b) =>
      b.latePieces - a.latePieces ||
      b.soonPieces - a.soonPieces ||
      b.pieces - a.pieces ||
      kindOrder(a.kind) - kindOrder(b.kind) ||
      coneOrder(a.cone) - coneOrder(b.cone),
  );
}
