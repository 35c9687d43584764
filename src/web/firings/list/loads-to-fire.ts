import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord, LoadState } from "../../../studio/records/load-record.ts";

const ORDER: readonly LoadState[] = ["loaded", "loading", "planned"];

/** Planned loads that no firing is open for, what stands in the kiln already first. */
export function loadsToFire(loads: readonly LoadRecord[], firings: readonly FiringRecord[]): LoadRecord[] {
  const taken = new Set(
    firings.flatMap(({ loadId, endedAt }) => (endedAt === null && loadId !== null ? [loadId] : [])),
  );
  return loads
    .filter(({ id, plan, state }) => plan !== null && ORDER.includes(state) && !taken.has(id))
    .sort((a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state) || b.changedAt.localeCompare(a.changedAt));
}
