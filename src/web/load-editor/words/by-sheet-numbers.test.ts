import { expect, test } from "vitest";
import { checkPlan } from "../../../loading/checker/check-plan.ts";
import { readLoadPlan } from "../../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../../loading/read-load-request.ts";
import { sheetLoad } from "../../../sheets/sheet-load.ts";
import { batch, load, planOf } from "../../loads/testing/example-load.ts";
import { bySheetNumbers } from "./by-sheet-numbers.ts";

test("a rule's sentence names pieces by the numbers that are drawn", () => {
  const record = load("l1", [batch("mug"), batch("bowl")], ["mug", "bowl"]);
  const plan = planOf(["mug", "bowl"]);
  const [level] = plan.levels;
  // The first of the file stands nearest to her, so the sheet numbers it last.
  level?.placements.splice(0, 1, { ware: "mug", xMm: 0, yMm: -80, turnDeg: 0 });
  const request = readLoadRequest(record.request);
  const whole = readLoadPlan(plan, request);
  const gap = checkPlan(request, whole).find(({ rule }) => rule === "gapMm");
  const said = bySheetNumbers(gap?.message ?? "", sheetLoad(request, whole));
  expect(gap?.message).toContain("mug (level 1, piece 1)");
  expect(said).toContain("mug (level 1, number 2)");
  expect(said).toContain("bowl (level 1, number 1)");
});
