import type { FiringRecord, MeterReading } from "../../../studio/records/firing-record.ts";

/** The meter before and after a firing, each where it was read. */
export interface MeterPair {
  readonly before: MeterReading | null;
  readonly after: MeterReading | null;
}

/** What is nearer the start counts as read before. */
export function meterPair({
  meterReadings,
  startedAt,
  shutOffAt,
  endedAt,
}: Pick<FiringRecord, "meterReadings" | "startedAt" | "shutOffAt" | "endedAt">): MeterPair {
  const [first] = meterReadings;
  const last = meterReadings.at(-1);
  if (!first || !last) return { before: null, after: null };
  if (first !== last) return { before: first, after: last };
  const over = shutOffAt ?? endedAt;
  if (startedAt === null) return { before: first, after: null };
  const [read, start] = [Date.parse(first.at), Date.parse(startedAt)];
  const isLate = over == null ? read > start : read - start > Date.parse(over) - read;
  return isLate ? { before: null, after: first } : { before: first, after: null };
}

/** What the firing took, kWh; null where it was not read twice. */
export const usedKWh = ({ before, after }: MeterPair): number | null =>
  before && after ? after.kWh - before.kWh : null;
