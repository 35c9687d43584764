import { describe, expect, test } from "vitest";
import { checkPlan } from "../checker/check-plan.ts";
import type { LoadPlan } from "../load-plan.ts";
import { EIGHT_SIDED } from "../testing/random-loads.ts";
import { addBeside, lacksOtherHalf } from "./add-beside.ts";
import { addLevel } from "./edit-levels.ts";

const empty: LoadPlan = { format: "load-plan/1", levels: [], left: [], figures: {} };
const oneHalf = addLevel(EIGHT_SIDED, empty, { above: null, shelf: "half", heightsMm: [25] }).plan;

describe("a second half shelf", () => {
  test("lies at the same height without running into the first, on posts that carry it", () => {
    const { plan } = addBeside(EIGHT_SIDED, oneHalf, 0);
    expect(plan.levels.map(({ topMm }) => topMm)).toEqual([oneHalf.levels[0]?.topMm, oneHalf.levels[0]?.topMm]);
    const broken = checkPlan(EIGHT_SIDED, plan).filter(({ rule }) => rule !== "stock");
    expect(broken.map(({ message }) => message)).toEqual([]);
  });

  test("is wanted only where one half lies alone", () => {
    expect(lacksOtherHalf(EIGHT_SIDED, oneHalf, 0)).toBe(true);
    const both = addBeside(EIGHT_SIDED, oneHalf, 0).plan;
    expect([0, 1].map((level) => lacksOtherHalf(EIGHT_SIDED, both, level))).toEqual([false, false]);
    const full = addLevel(EIGHT_SIDED, empty, { above: null, shelf: "full", heightsMm: [25] }).plan;
    expect(lacksOtherHalf(EIGHT_SIDED, full, 0)).toBe(false);
  });

  test("is refused beside a full one", () => {
    const full = addLevel(EIGHT_SIDED, empty, { above: null, shelf: "full", heightsMm: [25] }).plan;
    expect(() => addBeside(EIGHT_SIDED, full, 0)).toThrow(/half shelf/);
  });
});
