import { expect, test } from "vitest";
import { coneOrNull } from "./cone-or-null.ts";

test("a text that means a cone is that cone however it is written, and any other is none", () => {
  expect(["6", "cone 6", "^06", "Δ05½"].map(coneOrNull)).toEqual(["6", "6", "06", "05.5"]);
  expect(["", "  ", "hot", "7½", null, undefined].map(coneOrNull)).toEqual([null, null, null, null, null, null]);
});
