import { type Static, Type } from "typebox";
import { sameValue } from "../history/same-value.ts";
import { StudioSettingsSchema } from "../records/studio-settings.ts";
import { command, input } from "./inputs.ts";
import { given } from "./keeping.ts";

const { studioName, lengthUnits, temperatureUnits, paper, currency } = StudioSettingsSchema.properties;

export const SettingsChangeSchema = input({
  studioName: Type.Optional(studioName),
  lengthUnits: Type.Optional(lengthUnits),
  temperatureUnits: Type.Optional(temperatureUnits),
  paper: Type.Optional(paper),
  currency: Type.Optional(currency),
});
export type SettingsWish = Static<typeof SettingsChangeSchema>;

const changeSettings = command({
  name: "change-settings",
  schema: SettingsChangeSchema,
  scope: () => "settings",
  run: async (records, change) => {
    const before = await records.settings.get();
    const after = { ...before, ...given(change) };
    if (!sameValue(before, after)) await records.settings.put(after);
    return "Changed the studio's settings";
  },
});

export const SETTINGS_COMMANDS = [changeSettings];
