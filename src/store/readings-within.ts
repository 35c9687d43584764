import type { Reading } from "../studio/records/reading.ts";
import type { ReadingSpan } from "../studio/records/store.ts";
import type { Database } from "./database.ts";

/** One probe of one firing. */
export interface ProbeOfFiring {
  readonly firingId: string;
  readonly probe: string;
}

/** One probe's readings within a span, in order of time. */
export async function readingsWithin(
  database: Database,
  { firingId, probe }: ProbeOfFiring,
  { from = "", to = "~", most = Number.MAX_SAFE_INTEGER }: ReadingSpan,
): Promise<Reading[]> {
  const rows = await database
    .selectFrom("readings")
    .select(["at", "tempC"])
    .where("firingId", "=", firingId)
    .where("probe", "=", probe)
    .where("at", ">=", from)
    .where("at", "<", to)
    .orderBy("at")
    .limit(most)
    .execute();
  return rows as unknown as Reading[];
}
