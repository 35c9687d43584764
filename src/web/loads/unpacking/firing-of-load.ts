import type { FiringRecord } from "../../../studio/records/firing-record.ts";

/**
 * The firing a load has been through, the latest where there were several; null where none of it is kept. There its pieces
 * are judged one by one as they come out.
 */
export function firingOfLoad<Firing extends Pick<FiringRecord, "loadId" | "state" | "startedAt">>(
  loadId: string,
  firings: readonly Firing[],
): Firing | null {
  const fired = firings.filter((firing) => firing.loadId === loadId && firing.state !== "planned");
  return fired.sort((a, b) => (b.startedAt ?? "").localeCompare(a.startedAt ?? ""))[0] ?? null;
}
