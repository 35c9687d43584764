import { BadInput } from "../measures/bad-input.ts";
import type { SettingsPlace } from "../studio/records/history.ts";
import { corruptRow } from "../studio/records/refusals.ts";
import { FIRST_SETTINGS, readSettings } from "../studio/records/studio-settings.ts";
import type { Database } from "./database.ts";
import { fromJson } from "./from-json.ts";

const ID = "studio";

/** The studio's settings, in one row. */
export function settingsRow(database: Database): SettingsPlace {
  const find = () => database.selectFrom("settings").select("settings").where("id", "=", ID).executeTakeFirst();
  return {
    get: async () => {
      const row = await find();
      if (!row) return FIRST_SETTINGS;
      try {
        return readSettings(fromJson(row.settings, "settings"));
      } catch (error) {
        if (error instanceof BadInput) throw corruptRow(error.path, error.found, error.expected);
        throw error;
      }
    },
    arePut: async () => (await find()) !== undefined,
    put: async (settings) => {
      const text = JSON.stringify(readSettings(settings));
      await database
        .insertInto("settings")
        .values({ id: ID, settings: text })
        .onConflict((there) => there.column("id").doUpdateSet({ settings: text }))
        .execute();
    },
  };
}
