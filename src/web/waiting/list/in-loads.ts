import type { LoadRecord } from "../../../studio/records/load-record.ts";

/** A load, or one of several ways to load the same firing. */
export type Load = Pick<LoadRecord, "id" | "state" | "request" | "plan" | "sources"> & {
  readonly alternativeOf?: string | null;
};

/**
 * How many pieces of each batch stand in loads that are not fired yet, by the batch's id. Of several ways to load one
 * firing the fullest counts: they are the same pieces.
 */
export function inLoads(loads: readonly Load[]): Map<string, number> {
  const byFiring = new Map<string, Map<string, number>>();
  for (const load of loads) {
    if (load.state === "fired" || load.state === "unpacked") continue;
    const firing = load.alternativeOf ?? load.id;
    const most = byFiring.get(firing) ?? new Map<string, number>();
    for (const [wareId, count] of countsOf(load)) most.set(wareId, Math.max(count, most.get(wareId) ?? 0));
    byFiring.set(firing, most);
  }
  const all = new Map<string, number>();
  for (const counts of byFiring.values()) {
    for (const [wareId, count] of counts) all.set(wareId, count + (all.get(wareId) ?? 0));
  }
  return all;
}

/** Of a load that is planned, what stands in it; of one that is not, what is to go in. */
function countsOf({ plan, request, sources }: Load): Map<string, number> {
  const counts = new Map<string, number>();
  const sourceOf = new Map(sources.map(({ ware, wareId }) => [ware, wareId]));
  const count = (ware: string, more: number): void => {
    const wareId = sourceOf.get(ware);
    if (wareId !== undefined) counts.set(wareId, more + (counts.get(wareId) ?? 0));
  };
  if (plan === null) for (const { name, count: pieces } of request.ware) count(name, pieces);
  else for (const { placements } of plan.levels) for (const { ware } of placements) count(ware, 1);
  return counts;
}
