import { type Static, Type } from "typebox";
import { readBySchema } from "../../measures/read-schema.ts";
import { OneOf } from "../../measures/schema.ts";
import { checkKeepable, Words } from "./fields.ts";

/** What holds for the whole studio. How a screen looks (light, dark) is each device's own and is not kept here. */
export const StudioSettingsSchema = Type.Object(
  {
    studioName: Words("What the studio is called, for the sheet; may be empty.", 120),
    lengthUnits: OneOf(["metric", "inches"] as const, "How lengths are shown; either may be typed."),
    temperatureUnits: OneOf(["C", "F"] as const, "How temperatures are shown."),
    paper: OneOf(["a4", "letter"] as const, "What sheets are printed on."),
    currency: Words("Three letters before a price, such as EUR; may be empty.", 3),
  },
  { additionalProperties: false },
);
export type StudioSettings = Static<typeof StudioSettingsSchema>;

export const FIRST_SETTINGS: StudioSettings = {
  studioName: "",
  lengthUnits: "metric",
  temperatureUnits: "C",
  paper: "a4",
  currency: "",
};

/**
 * Checks settings from outside.
 *
 * @throws BadInput naming the field
 */
export function readSettings(value: unknown, path = "settings"): StudioSettings {
  const settings = readBySchema(StudioSettingsSchema, value, path);
  for (const [name, text] of Object.entries(settings)) checkKeepable(text, `${path}.${name}`);
  return settings;
}
