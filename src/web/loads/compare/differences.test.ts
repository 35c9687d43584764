import { expect, test } from "vitest";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import { planOf } from "../testing/example-load.ts";
import { differenceInWords, takenBy } from "./differences.ts";

const plan = (...standing: string[]): LoadPlan => ({ ...planOf(standing), figures: {} });
const times = (count: number, name: string): string[] => Array.from({ length: count }, () => name);

test("counts what stands in a plan, over all its levels", () => {
  const two = plan("mug", "mug", "bowl");
  expect([...takenBy({ ...two, levels: [...two.levels, ...two.levels] })]).toEqual([
    ["mug", 4],
    ["bowl", 2],
  ]);
});

test("says what one takes and leaves beside the other", () => {
  const one = plan("platter", ...times(3, "mug"));
  const other = plan(...times(6, "mug"), "lid");
  expect(differenceInWords(one, other)).toBe("Takes the platter. Leaves 3\u00a0×\u00a0mug more and the lid.");
  expect(differenceInWords(other, one)).toBe("Takes 3\u00a0×\u00a0mug more and the lid. Leaves the platter.");
  expect(differenceInWords(plan(...times(2, "bowl")), plan())).toBe("Takes 2\u00a0×\u00a0bowl.");
  expect(differenceInWords(plan(...times(2, "bowl")), plan("bowl"))).toBe("Takes one more bowl.");
});

test("keeps names apart that hold commas of their own", () => {
  const words = differenceInWords(plan("mug, moss", "mug, blue", "bowl"), plan());
  expect(words).toBe("Takes the mug, moss; the mug, blue and the bowl.");
});

test("says so where only the places differ", () => {
  const one = plan("mug");
  expect(differenceInWords(one, plan("mug"))).toBe("The same pieces, standing otherwise.");
  const twoLevels = { ...one, levels: [...one.levels, { ...one.levels[0]!, placements: [] }] };
  expect(differenceInWords(twoLevels, one)).toBe("The same pieces on 1 level more.");
});
