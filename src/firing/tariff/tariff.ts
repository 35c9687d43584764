import { type Static, Type } from "typebox";
import { BadInput } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";
import { Name } from "../../measures/schema.ts";
import { offsetMinutes } from "./local-clock.ts";

const Price = (description: string) => Type.Number({ minimum: -1000, maximum: 10000, description });
const ClockTime = (description: string) =>
  Type.String({ pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]$", description: `${description}, as 22:30.` });

export const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;

export const TariffSlotSchema = Type.Object(
  {
    name: Name("What the bill calls it: night, peak."),
    pricePerKWh: Price("What a kilowatt hour costs in it."),
    from: ClockTime("When it begins on the clock on the wall"),
    to: ClockTime("When it ends; before `from` it runs past midnight, equal to it it is the whole day"),
    days: Type.Optional(
      Type.Array(
        Type.Union(
          [
            Type.Literal("Mon"),
            Type.Literal("Tue"),
            Type.Literal("Wed"),
            Type.Literal("Thu"),
            Type.Literal("Fri"),
            Type.Literal("Sat"),
            Type.Literal("Sun"),
          ],
          { description: "A day on which it begins." },
        ),
        { minItems: 1, maxItems: 7 },
      ),
    ),
    months: Type.Optional(Type.Array(Type.Integer({ minimum: 1, maximum: 12 }), { minItems: 1, maxItems: 12 })),
    carbonGPerKWh: Type.Optional(Type.Number({ minimum: 0, maximum: 5000, description: "Carbon dioxide, grams." })),
  },
  { additionalProperties: false },
);
export type TariffSlot = Static<typeof TariffSlotSchema>;

/** How she pays for electricity: prices by the clock of her place, and a charge for the highest draw where there is one. */
export const TariffSchema = Type.Object(
  {
    timeZone: Type.String({ minLength: 1, maxLength: 60, description: "Of the IANA database, such as Europe/Lisbon." }),
    currency: Type.String({ minLength: 1, maxLength: 8 }),
    otherwisePerKWh: Price("What a kilowatt hour costs outside every slot."),
    otherwiseCarbonGPerKWh: Type.Optional(Type.Number({ minimum: 0, maximum: 5000 })),
    slots: Type.Array(TariffSlotSchema, { maxItems: 50, description: "Where two overlap, the first one counts." }),
    demand: Type.Optional(
      Type.Object(
        {
          pricePerKW: Price("For each kilowatt of the highest mean draw of the bill's period."),
          windowMin: Type.Union([Type.Literal(15), Type.Literal(30), Type.Literal(60)], {
            description: "Over how many minutes the draw is averaged, counted from the full hour.",
          }),
          alreadyKW: Type.Optional(
            Type.Number({ minimum: 0, maximum: 10000, description: "The highest of this period so far; paid anyway." }),
          ),
          otherLoadKW: Type.Optional(
            Type.Number({ minimum: 0, maximum: 10000, description: "What else draws while the kiln fires." }),
          ),
        },
        { additionalProperties: false },
      ),
    ),
    fixedPerFiring: Type.Optional(Price("A share of standing charges that she counts to each firing.")),
  },
  { additionalProperties: false, title: "Electricity tariff" },
);
export type Tariff = Static<typeof TariffSchema>;

/**
 * Checks a tariff read from JSON.
 *
 * @throws BadInput naming the field, what was found and what would do
 */
export function readTariff(json: unknown): Tariff {
  const tariff = readBySchema(TariffSchema, json);
  try {
    offsetMinutes(tariff.timeZone, 0);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new BadInput({
      code: "not-a-time-zone",
      path: "timeZone",
      found: `"${tariff.timeZone}"`,
      expected: "a time zone of the IANA database, such as Europe/Lisbon or America/Denver",
    });
  }
  return tariff;
}

/** Minutes after midnight of a time on the clock such as 22:30. */
export const clockMinute = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3, 5));
