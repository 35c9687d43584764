import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";

/** A firing that is over, as a watch that says no more: what was noticed stays, the rest is in its readings. */
export function stillWatch(firing: FiringRecord, dangers: readonly string[] = []): FiringWatch {
  const startedAt = firing.startedAt ?? firing.createdAt;
  const minute = (moment: string): number => (Date.parse(moment) - Date.parse(startedAt)) / 60_000;
  const endedAt = firing.endedAt ?? firing.changedAt;
  return {
    ...{ now: endedAt, pace: 1, startedAt, latest: null, place: null, heat: [], outlook: null },
    faults: (firing.notices ?? []).map(({ kind, since, until, message }) => ({
      kind,
      sinceMin: minute(since),
      untilMin: minute(until ?? endedAt),
      found: message.split(". ")[0] ?? message,
      message,
      isDanger: dangers.includes(kind),
    })),
  };
}
