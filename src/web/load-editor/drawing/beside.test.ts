import { expect, test } from "vitest";
import { addBeside } from "../../../loading/editing/add-beside.ts";
import { addLevel } from "../../../loading/editing/edit-levels.ts";
import type { LoadPlan } from "../../../loading/load-plan.ts";
import { EIGHT_SIDED } from "../../../loading/testing/random-loads.ts";
import { type SheetLevel, sheetLoad } from "../../../sheets/sheet-load.ts";
import { levelsAtHeightOf, levelsBeside } from "./beside.ts";

const empty: LoadPlan = { format: "load-plan/1", levels: [], left: [], figures: {} };
const half = addLevel(EIGHT_SIDED, empty, { above: null, shelf: "half", heightsMm: [25] }).plan;
const both = addBeside(EIGHT_SIDED, half, 0).plan;
const three = addLevel(EIGHT_SIDED, both, { above: 1, shelf: "full", heightsMm: [100] }).plan;

test("two half shelves lie beside each other, a full one lies over them", () => {
  const load = sheetLoad(EIGHT_SIDED, three);
  const beside = load.levels.map((level) => levelsBeside(load, level).map(({ index }) => index));
  expect(beside).toEqual([[1], [0], []]);
  const [first] = load.levels as [SheetLevel];
  expect(levelsAtHeightOf(load, first).map(({ index }) => index)).toEqual([0, 1]);
});
