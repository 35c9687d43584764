import type { HistorySet } from "../studio/records/history.ts";
import type { Reading } from "../studio/records/reading.ts";
import type { Database } from "./database.ts";
import { fromJson } from "./from-json.ts";

/** Temperatures that went with a firing when it was taken out, a probe a row: [moment, °C] each, as JSON. */
export function historyReadings(database: Database): Pick<HistorySet, "keepReadings" | "readings"> {
  return {
    keepReadings: async (entryId, { firingId, probe, readings }) => {
      const text = JSON.stringify(readings.map(({ at, tempC }) => [at, tempC]));
      await database
        .insertInto("historyReadings")
        .values({ entryId, firingId, probe, readings: text })
        .onConflict((there) =>
          there.columns(["entryId", "firingId", "probe"]).doUpdateSet((given) => ({
            readings: given.ref("excluded.readings"),
          })),
        )
        .execute();
    },
    readings: async (entryId, firingId) => {
      const rows = await database
        .selectFrom("historyReadings")
        .select(["probe", "readings"])
        .where("entryId", "=", entryId)
        .where("firingId", "=", firingId)
        .orderBy("probe")
        .execute();
      return rows.map(({ probe, readings }) => ({
        firingId,
        probe: probe as string,
        readings: (fromJson(readings, `history "${entryId}".readings`) as [string, number][]).map(
          ([at, tempC]): Reading => ({ at, tempC }),
        ),
      }));
    },
  };
}
