import { Type } from "typebox";
import { sameValue } from "../history/same-value.ts";
import { orNull } from "../records/fields.ts";
import { type StudioSettings, StudioSettingsSchema } from "../records/studio-settings.ts";
import { command, input } from "./inputs.ts";
import { given } from "./keeping.ts";
import { settingsInWords } from "./settings-in-words.ts";

const fields = StudioSettingsSchema.properties;

/** Some of the settings. Null takes one out that may be left out. */
export const SettingsChangeSchema = input({
  studioName: Type.Optional(fields.studioName),
  lengthUnits: Type.Optional(fields.lengthUnits),
  temperatureUnits: Type.Optional(fields.temperatureUnits),
  paper: Type.Optional(fields.paper),
  currency: Type.Optional(fields.currency),
  tariff: Type.Optional(orNull(fields.tariff)),
  notices: Type.Optional(orNull(fields.notices)),
  elementSetPrice: Type.Optional(orNull(fields.elementSetPrice)),
  elementLifeFirings: Type.Optional(orNull(fields.elementLifeFirings)),
  shelfPrice: Type.Optional(orNull(fields.shelfPrice)),
  shelfLifeFirings: Type.Optional(orNull(fields.shelfLifeFirings)),
  guestFee: Type.Optional(orNull(fields.guestFee)),
});

const changeSettings = command({
  name: "change-settings",
  schema: SettingsChangeSchema,
  scope: () => "settings",
  run: async (records, change) => {
    const before = await records.settings.get();
    const after = withoutNulls({ ...before, ...given(change) }) as StudioSettings;
    if (!sameValue(before, after)) await records.settings.put(after);
    return settingsInWords(before, after);
  },
});

const withoutNulls = (settings: object): object =>
  Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== null));

export const SETTINGS_COMMANDS = [changeSettings];
