import { expect, test } from "vitest";
import type { UpkeepRecord } from "../../../studio/records/upkeep-record.ts";
import { inputOf, newNote } from "./note-draft.ts";
import { entryWords } from "./work-words.ts";

const now = "2026-11-25T10:00:00.000Z";
const book = [
  { what: "element resistance", at: "2026-09-01T00:00:00.000Z", ohms: [30] },
  { what: "element resistance", at: "2026-10-01T00:00:00.000Z", ohms: [31, 31] },
] as UpkeepRecord[];

test("a measuring asks for as many circuits as the last one had, and for every one of them", () => {
  const draft = newNote("element resistance", book, now);
  expect(draft.ohms).toEqual([null, null]);
  expect(newNote("element resistance", [], now).ohms).toHaveLength(3);
  expect(inputOf({ ...draft, ohms: [31.2, null] })).toHaveProperty("missing");
  expect(inputOf({ ...draft, ohms: [] })).toHaveProperty("missing");
  expect(inputOf({ ...draft, ohms: [31.2, 31.4] })).toEqual({
    input: { at: now, what: "element resistance", ohms: [31.2, 31.4], note: "" },
  });
});

test("shelves are counted, parts are not, and something else needs words", () => {
  expect(inputOf({ ...newNote("shelf washed", [], now), count: 4 })).toEqual({
    input: { at: now, what: "shelf washed", count: 4, note: "" },
  });
  expect(inputOf(newNote("relay changed", [], now))).toEqual({ input: { at: now, what: "relay changed", note: "" } });
  expect(inputOf(newNote("other", [], now))).toHaveProperty("missing");
  expect(inputOf({ ...newNote("probe changed", [], now), at: null })).toEqual({ missing: "When was it?" });
});

test("a line of the book", () => {
  expect(entryWords({ what: "shelf washed", count: 3 })).toBe("Washed 3 shelves");
  expect(entryWords({ what: "shelf cracked" })).toBe("1 shelf cracked");
  expect(entryWords({ what: "element resistance", ohms: [30.4, 31] })).toBe(
    "Elements measured: 30.4\u00A0Ω, 31\u00A0Ω",
  );
});
