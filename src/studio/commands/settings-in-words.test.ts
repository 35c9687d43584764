import { expect, test } from "vitest";
import { FIRST_SETTINGS } from "../records/studio-settings.ts";
import { settingsInWords } from "./settings-in-words.ts";

test("what was set is said where a word or two says it, else what it was that changed", () => {
  const said = (change: object) => settingsInWords(FIRST_SETTINGS, { ...FIRST_SETTINGS, ...change });
  expect(said({ lengthUnits: "inches" })).toBe("Set lengths to inches");
  expect(said({ temperatureUnits: "F", paper: "a4" })).toBe("Set temperatures to °F");
  expect(said({ paper: "letter" })).toBe("Set the paper to letter");
  expect(said({ studioName: "By the mill" })).toBe("Called the studio By the mill");
  expect(said({ guestFee: { perLitre: 0.2, perFiring: 3 } })).toBe("Changed what guests pay");
  expect(said({ lengthUnits: "inches", temperatureUnits: "F", shelfPrice: 40 })).toBe(
    "Changed the units of length, the units of temperature and what a shelf costs",
  );
  expect(said({})).toBe("Left the studio's settings as they were");
  const named = { ...FIRST_SETTINGS, currency: "EUR" };
  expect(settingsInWords(named, FIRST_SETTINGS)).toBe("Changed the currency");
});
