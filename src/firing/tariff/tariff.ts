import { type Static, Type } from "typebox";
import { BadInput, shown } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { Name } from "../../measures/schema.ts";
import { MINUTES_A_DAY, minutesOfDay } from "./time-of-day.ts";
import { checkTimeZone } from "./zone-clock.ts";

export const TARIFF_FORMAT = "tariff/1";
export const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;
const WeekdaySchema = Type.Union([
  Type.Literal("monday"),
  Type.Literal("tuesday"),
  Type.Literal("wednesday"),
  Type.Literal("thursday"),
  Type.Literal("friday"),
  Type.Literal("saturday"),
  Type.Literal("sunday"),
]);

const Money = (description: string) => Type.Number({ minimum: 0, maximum: 1e6, description });
const ClockTime = (description: string) => Type.String({ minLength: 1, maxLength: 5, description });

const Carbon = Type.Number({ minimum: 0, maximum: 5000, description: "Carbon dioxide for each kWh, grams." });

export const TariffSlotSchema = Type.Object(
  {
    name: Name("What the slot is called on the bill, such as night."),
    from: ClockTime("Local time at which it begins, such as 22:00."),
    to: ClockTime("Local time at which it ends, up to 24:00; earlier than `from` where it runs over midnight."),
    weekdays: Type.Optional(
      Type.Array(WeekdaySchema, {
        minItems: 1,
        maxItems: 7,
        description:
          "The days on which it begins; every day where left out. After midnight it still is the day's before.",
      }),
    ),
    months: Type.Optional(
      Type.Array(Type.Integer({ minimum: 1, maximum: 12 }), {
        minItems: 1,
        maxItems: 12,
        description: "The months in which it holds, 1 to 12; all where left out.",
      }),
    ),
    pricePerKWh: Money("What a kilowatt-hour costs in it."),
    carbonGPerKWh: Type.Optional(Carbon),
  },
  { additionalProperties: false },
);
export type TariffSlot = Static<typeof TariffSlotSchema>;

/** The file `tariff/1`: what electricity costs, and when. */
export const TariffSchema = Type.Object(
  {
    format: Type.Literal(TARIFF_FORMAT),
    name: Name("What she calls it."),
    timeZone: Type.String({
      minLength: 1,
      maxLength: 60,
      description: "The IANA time zone whose clock the slots follow, such as Europe/Berlin.",
    }),
    currency: Type.Optional(Type.String({ minLength: 1, maxLength: 12, description: "Printed after every sum." })),
    pricePerKWh: Money("What a kilowatt-hour costs outside every slot."),
    carbonGPerKWh: Type.Optional(Carbon),
    slots: Type.Optional(
      Type.Array(TariffSlotSchema, { maxItems: 100, description: "Where two hold at once, the first counts." }),
    ),
    demand: Type.Optional(
      Type.Object(
        {
          pricePerKW: Money("What each kilowatt of the highest mean costs."),
          windowMin: Type.Union([Type.Literal(15), Type.Literal(30), Type.Literal(60)], {
            description: "Minutes over which the meter takes its mean, counted from the full hour.",
          }),
          otherLoadKW: Type.Optional(
            Type.Number({ minimum: 0, maximum: 10000, description: "What else draws while the kiln fires." }),
          ),
          alreadyKW: Type.Optional(
            Type.Number({
              minimum: 0,
              maximum: 10000,
              description: "The highest mean of this billing period so far, which is paid for anyway.",
            }),
          ),
        },
        { additionalProperties: false, description: "A charge on the highest mean power." },
      ),
    ),
    fixed: Type.Optional(
      Type.Object(
        {
          price: Money("A charge whatever is used, such as a month's standing charge."),
          share: Type.Number({ minimum: 0, maximum: 1, description: "The share of it that this firing is to carry." }),
        },
        { additionalProperties: false },
      ),
    ),
  },
  { additionalProperties: false, title: "Tariff", description: "What electricity costs, by the local clock." },
);
export type Tariff = Static<typeof TariffSchema>;

/**
 * Checks a tariff read from JSON.
 *
 * @throws BadInput naming the field, what was found and what would do
 */
export function readTariff(json: unknown): Tariff {
  const tariff = readBySchema(TariffSchema, json);
  checkTimeZone(tariff.timeZone, "timeZone");
  (tariff.slots ?? []).forEach((slot, i) => {
    const from = minutesOfDay(slot.from, `slots[${i}].from`);
    const to = minutesOfDay(slot.to, `slots[${i}].to`);
    if (from !== to && from < MINUTES_A_DAY) return;
    throw new BadInput({
      code: "does-nothing",
      path: `slots[${i}]`,
      found: `${shown(slot.from)} to ${shown(slot.to)}, which is no time at all`,
      expected: "two times that differ; a whole day is 00:00 to 24:00",
    });
  });
  return tariff;
}
