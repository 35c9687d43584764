import { type Static, Type } from "typebox";
import { readTariff, TariffSchema } from "../../firing/tariff/tariff.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { OneOf } from "../../measures/schema.ts";
import { checkKeepable, Words } from "./fields.ts";
import { within } from "./record-kind.ts";

const Money = (description: string) => Type.Number({ minimum: 0, maximum: 1e6, description });
const Firings = (description: string) => Type.Integer({ minimum: 1, maximum: 100_000, description });

/** Where word of trouble goes besides the screen. How often is the quiet rules' business. */
export const NoticeWishesSchema = Type.Object(
  {
    browser: Type.Boolean({ description: "Whether this studio's open browsers show it." }),
    email: Words("An address; empty for none. The mail server's own settings stand in the data folder.", 254),
    webhook: Words("An https address that is sent JSON; empty for none.", 500),
  },
  { additionalProperties: false },
);
export type NoticeWishes = Static<typeof NoticeWishesSchema>;

/** What guests pay to have ware fired: for the space it takes, and for each firing. */
export const GuestFeeSchema = Type.Object(
  {
    perLitre: Money("For each litre of the kiln that a piece takes up."),
    perFiring: Money("For each firing besides."),
  },
  { additionalProperties: false },
);
export type GuestFee = Static<typeof GuestFeeSchema>;

/** What holds for the whole studio. How a screen looks (light, dark) is each device's own and is not kept here. */
export const StudioSettingsSchema = Type.Object(
  {
    studioName: Words("What the studio is called, for the sheet; may be empty.", 120),
    lengthUnits: OneOf(["metric", "inches"] as const, "How lengths are shown; either may be typed."),
    temperatureUnits: OneOf(["C", "F"] as const, "How temperatures are shown."),
    paper: OneOf(["a4", "letter"] as const, "What sheets are printed on."),
    currency: Words("Three letters before a price, such as EUR; may be empty.", 3),
    tariff: Type.Optional(TariffSchema),
    notices: Type.Optional(NoticeWishesSchema),
    elementSetPrice: Type.Optional(Money("A new set of elements, fitted.")),
    elementLifeFirings: Type.Optional(Firings("How many firings a set lasts.")),
    shelfPrice: Type.Optional(Money("A new shelf.")),
    shelfLifeFirings: Type.Optional(Firings("How many firings a shelf lasts.")),
    guestFee: Type.Optional(GuestFeeSchema),
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
  for (const [name, text] of Object.entries(settings)) {
    if (typeof text === "string") checkKeepable(text, `${path}.${name}`);
  }
  const { tariff, notices } = settings;
  if (tariff !== undefined) within(`${path}.tariff`, () => readTariff(tariff));
  if (notices !== undefined) checkNotices(notices, `${path}.notices`);
  return settings;
}

/** An address that mail or a request can be sent to. Whether anybody is there shows when it is tried. */
function checkNotices({ email, webhook }: NoticeWishes, path: string): void {
  const refuse = (field: string, found: string, expected: string): never => {
    throw new BadInput({ code: "not-an-address", path: `${path}.${field}`, found: shown(found), expected });
  };
  checkKeepable(email, `${path}.email`);
  checkKeepable(webhook, `${path}.webhook`);
  if (email !== "" && !/^[^\s@]+@[^\s@]+$/.test(email)) refuse("email", email, "an address such as name@example.org");
  if (webhook !== "" && !/^https?:\/\/\S+$/.test(webhook)) refuse("webhook", webhook, "an http or https address");
}
