import { expect, test } from "vitest";
import { nodeIsNewEnough } from "./runtime.mjs";

test("a Node too old for the program or refused by its tools is not run on", () => {
  expect(["18.0.0", "20.20.2", "22.17.1", "23.11.0", "25.1.0"].map((version) => nodeIsNewEnough(version))).toEqual([
    false,
    false,
    false,
    false,
    false,
  ]);
  expect(["22.18.0", "24.21.0", "26.0.0"].map((version) => nodeIsNewEnough(version))).toEqual([true, true, true]);
});
