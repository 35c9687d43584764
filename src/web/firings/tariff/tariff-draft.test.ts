import { expect, test } from "vitest";
import type { Tariff } from "../../../firing/tariff/tariff.ts";
import { draftOfTariff, NEW_SLOT, tariffOfDraft } from "./tariff-draft.ts";

const whole: Tariff = {
  format: "tariff/1",
  name: "town works",
  timeZone: "Europe/Berlin",
  currency: "EUR",
  pricePerKWh: 0.34,
  slots: [
    { name: "night", from: "22:00", to: "06:00", pricePerKWh: 0.22 },
    {
      name: "noon",
      from: "11:00",
      to: "15:00",
      pricePerKWh: 0.2,
      weekdays: ["saturday", "sunday"],
      carbonGPerKWh: 200,
    },
    { name: "odd", from: "06:00", to: "07:00", pricePerKWh: 0.4, weekdays: ["monday", "friday"], months: [1, 2] },
  ],
  demand: { pricePerKW: 5, windowMin: 15 },
  fixed: { price: 12, share: 0.1 },
};

test("a tariff goes through its form unharmed, with what the form has no field for", () => {
  expect(tariffOfDraft(draftOfTariff(whole), whole, "UTC")).toEqual(whole);
  expect(draftOfTariff(whole).slots.map(({ days }) => days)).toEqual(["every day", "weekend", "as before"]);
});

test("a first tariff follows this device's clock; the same price at all times has no slots", () => {
  const flat = tariffOfDraft({ pricePerKWh: 0.3, slots: [] }, null, "America/New_York");
  expect(flat).toMatchObject({ timeZone: "America/New_York", pricePerKWh: 0.3 });
  expect(flat).not.toHaveProperty("slots");
  expect(tariffOfDraft({ pricePerKWh: 0.3, slots: [] }, whole, "UTC")).not.toHaveProperty("slots");
});

test("what is missing or no time is refused at its field", () => {
  expect(() => tariffOfDraft({ pricePerKWh: null, slots: [] }, null, "UTC")).toThrow(/pricePerKWh/);
  expect(() => tariffOfDraft({ pricePerKWh: 1, slots: [NEW_SLOT] }, null, "UTC")).toThrow(/slots\[0\]\.pricePerKWh/);
  const none = { ...NEW_SLOT, pricePerKWh: 1, from: "06:00" };
  expect(() => tariffOfDraft({ pricePerKWh: 1, slots: [none] }, null, "UTC")).toThrow(/slots\[0\]/);
});
