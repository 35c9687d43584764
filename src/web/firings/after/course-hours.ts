import type { FiringRecord } from "../../../studio/records/firing-record.ts";

const HOUR_MS = 3_600_000;

/** Hours from the switch until the elements went off for good; null where either was not written down. */
export function courseHours({ startedAt, shutOffAt }: Pick<FiringRecord, "startedAt" | "shutOffAt">): number | null {
  if (startedAt === null || shutOffAt === undefined) return null;
  return (Date.parse(shutOffAt) - Date.parse(startedAt)) / HOUR_MS;
}
