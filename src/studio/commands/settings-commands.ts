import { type Static, Type } from "typebox";
import { sameValue } from "../history/same-value.ts";
import { orNull } from "../records/fields.ts";
import { type StudioSettings, StudioSettingsSchema } from "../records/studio-settings.ts";
import { command, input } from "./inputs.ts";
import { given } from "./keeping.ts";

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
export type SettingsWish = Static<typeof SettingsChangeSchema>;

const changeSettings = command({
  name: "change-settings",
  schema: SettingsChangeSchema,
  scope: () => "settings",
  run: async (records, change) => {
    const before = await records.settings.get();
    const after = withoutNulls({ ...before, ...given(change) }) as StudioSettings;
    if (!sameValue(before, after)) await records.settings.put(after);
    return inWords(Object.keys(change));
  },
});

const withoutNulls = (settings: object): object =>
  Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== null));

function inWords(names: readonly string[]): string {
  const [first] = names;
  if (names.length !== 1 || first === undefined) return "Changed the studio's settings";
  if (first === "tariff") return "Changed what electricity costs";
  if (first === "notices") return "Changed where notices go";
  if (first === "guestFee") return "Changed what guests pay";
  return "Changed the studio's settings";
}

export const SETTINGS_COMMANDS = [changeSettings];
