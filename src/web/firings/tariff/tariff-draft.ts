import { readTariff, type Tariff, type TariffSlot, WEEKDAYS } from "../../../firing/tariff/tariff.ts";
import { BadInput } from "../../../measures/bad-input.ts";

/** On which days a slot holds. */
export type SlotDays = "every day" | "weekdays" | "weekend" | "as before";

/** One slot as it is typed. */
export interface SlotDraft {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly days: SlotDays;
  readonly pricePerKWh: number | null;
  /** Of the slot it came from, where the form has no field for it. */
  readonly rest: Pick<TariffSlot, "weekdays" | "months" | "carbonGPerKWh">;
}

/** A tariff as it is typed. */
export interface TariffDraft {
  readonly pricePerKWh: number | null;
  readonly slots: readonly SlotDraft[];
}

const WORKING = WEEKDAYS.slice(0, 5);
const WEEKEND = WEEKDAYS.slice(5);

/** A slot to begin with. */
export const NEW_SLOT: SlotDraft = {
  name: "night",
  from: "22:00",
  to: "06:00",
  days: "every day",
  pricePerKWh: null,
  rest: {},
};

/** What the form shows of a tariff; an empty one where there is none yet. */
export function draftOfTariff(tariff: Tariff | null): TariffDraft {
  return {
    pricePerKWh: tariff?.pricePerKWh ?? null,
    slots: (tariff?.slots ?? []).map(({ name, from, to, pricePerKWh, ...rest }) => ({
      ...{ name, from, to, pricePerKWh, rest },
      days: daysOf(rest.weekdays),
    })),
  };
}

function daysOf(weekdays: TariffSlot["weekdays"]): SlotDays {
  if (weekdays === undefined || weekdays.length === 7) return "every day";
  const isJust = (days: readonly string[]) =>
    days.length === weekdays.length && days.every((day) => weekdays.includes(day as never));
  if (isJust(WORKING)) return "weekdays";
  return isJust(WEEKEND) ? "weekend" : "as before";
}

/**
 * The tariff a form means. What the form has no field for stays as it was.
 *
 * @param timeZone of this device, for a tariff that is new
 * @throws BadInput naming the field
 */
export function tariffOfDraft(draft: TariffDraft, before: Tariff | null, timeZone: string): Tariff {
  const { slots: _, ...kept } = before ?? { format: "tariff/1" as const, name: "electricity", timeZone };
  return readTariff({
    ...kept,
    pricePerKWh: priceOf(draft.pricePerKWh, "pricePerKWh"),
    ...(draft.slots.length === 0 ? {} : { slots: draft.slots.map(slotOfDraft) }),
  });
}

function slotOfDraft({ name, from, to, days, pricePerKWh, rest }: SlotDraft, i: number): TariffSlot {
  const { weekdays: before, ...others } = rest;
  const weekdays =
    days === "as before" ? before : days === "weekdays" ? WORKING : days === "weekend" ? WEEKEND : undefined;
  return {
    ...others,
    ...{ name: name.trim(), from, to, pricePerKWh: priceOf(pricePerKWh, `slots[${i}].pricePerKWh`) },
    ...(weekdays === undefined ? {} : { weekdays: [...weekdays] }),
  };
}

function priceOf(price: number | null, path: string): number {
  if (price !== null) return price;
  throw new BadInput({ code: "missing-field", path, found: "nothing", expected: "what a kilowatt-hour costs" });
}
