import { expect, test } from "vitest";
import { suggestedName } from "./suggested-name.ts";

test("a load is named after its firing and the day, as she would say it", () => {
  expect(suggestedName("glaze", "6", "2026-11-25")).toBe("Glaze, cone 6, 25 November");
  expect(suggestedName("once-fired", null, "2027-03-01")).toBe("Once-fired, 1 March");
  expect(suggestedName(null, null, "2027-12-31")).toBe("31 December");
});

test("and never as another load is", () => {
  const taken = ["Glaze, cone 6, 25 November", "Glaze, cone 6, 25 November (2)"];
  expect(suggestedName("glaze", "6", "2026-11-25", taken)).toBe("Glaze, cone 6, 25 November (3)");
});
