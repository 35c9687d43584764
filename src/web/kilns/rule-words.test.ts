import { expect, test } from "vitest";
import { GLAZE_WARE_RULES } from "../../loading/clearance-rules.ts";
import { RULE_WORDS } from "./rule-words.ts";

test("every clearance has its words, once", () => {
  expect(RULE_WORDS.map(({ rule }) => rule).sort()).toEqual(Object.keys(GLAZE_WARE_RULES).sort());
  for (const { label, words } of RULE_WORDS) {
    expect(label).not.toBe("");
    expect(words).toMatch(/^[A-Z][^.]*\.$/);
  }
});
