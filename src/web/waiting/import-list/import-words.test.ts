import { expect, test } from "vitest";
import { importCounts, importPress, importSummary } from "./import-words.ts";

const rows = (...whats: ("new" | "changed" | "same" | "refused")[]) => ({
  rows: whats.map((what, i) => ({
    line: i + 2,
    what,
    name: "",
    changes: [],
    notes: [],
    reason: null,
    after: null,
    before: null,
  })),
});

test("an import says beforehand what it will do", () => {
  const counts = importCounts(rows("new", "new", "changed", "same", "refused"));
  expect(importSummary(counts)).toBe("2 new batches, 1 changed, 1 as it was, 1 left out.");
  expect(importPress(counts)).toBe("Take in and change 3 batches");
  expect(importPress(importCounts(rows("new")))).toBe("Take in 1 batch");
  expect(importPress(importCounts(rows("changed", "changed")))).toBe("Change 2 batches");
  expect(importSummary(importCounts(rows()))).toBe("The list has no rows.");
});
