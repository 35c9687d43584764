import { expect, test } from "vitest";
import { nodeIsNewEnough } from "./runtime.mjs";

test("a Node older than 22.12 is not run on, a newer one is", () => {
  expect(["20.20.2", "22.11.0", "18.0.0"].map((version) => nodeIsNewEnough(version))).toEqual([false, false, false]);
  expect(["22.12.0", "24.21.0", "26.0.0"].map((version) => nodeIsNewEnough(version))).toEqual([true, true, true]);
});
