import { KINDS } from "../studio/records/all-kinds.ts";
import { checkReadings, type Reading } from "../studio/records/reading.ts";
import { unknownRecord } from "../studio/records/refusals.ts";
import type { ReadingSet } from "../studio/records/store.ts";
import type { Database } from "./database.ts";
import { inParts } from "./in-parts.ts";

const COLUMNS = 4;

/** Readings, a row each. */
export function readingRows(database: Database): ReadingSet {
  return {
    add: async (firingId, probe, readings) => {
      checkReadings(probe, readings);
      const firing = await database.selectFrom("firings").select("id").where("id", "=", firingId).executeTakeFirst();
      if (!firing) throw unknownRecord(KINDS.firings, firingId);
      // One statement may not touch a row twice: of readings at one moment the last counts.
      const byMoment = new Map(readings.map(({ at, tempC }) => [at, { firingId, probe, at, tempC }]));
      for (const part of inParts([...byMoment.values()], COLUMNS)) {
        await database
          .insertInto("readings")
          .values(part)
          .onConflict((there) =>
            there.columns(["firingId", "probe", "at"]).doUpdateSet((given) => ({ tempC: given.ref("excluded.tempC") })),
          )
          .execute();
      }
    },
    of: async (firingId, since = "") => {
      const rows = await database
        .selectFrom("readings")
        .select(["probe", "at", "tempC"])
        .where("firingId", "=", firingId)
        .where("at", ">=", since)
        .orderBy("probe")
        .orderBy("at")
        .execute();
      const series = new Map<string, Reading[]>();
      for (const row of rows) {
        const probe = row.probe as string;
        const readings = series.get(probe) ?? [];
        readings.push({ at: row.at as string, tempC: row.tempC as number });
        series.set(probe, readings);
      }
      return [...series].map(([probe, readings]) => ({ firingId, probe, readings }));
    },
    remove: async (firingId) => {
      await database.deleteFrom("readings").where("firingId", "=", firingId).execute();
    },
  };
}
