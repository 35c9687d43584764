import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checkPlan } from "../../src/loading/checker/check-plan.ts";
import { planLoad } from "../../src/loading/planner/plan-load.ts";
import { readLoadRequest } from "../../src/loading/read-load-request.ts";

const request = readLoadRequest(JSON.parse(readFileSync(new URL("request.json", import.meta.url), "utf8")));

test("the first load keeps every rule, takes what must fire, and says why each other piece stays out", () => {
  const outcome = planLoad(request, { seed: 1, workLimit: 400_000 });
  if (outcome.kind !== "planned") throw new Error("no load");
  expect(checkPlan(request, outcome.plan)).toEqual([]);
  const left = new Map(outcome.plan.left.map((each) => [each.ware, each.reason]));
  for (const ware of request.ware) if (ware.mustFire) expect(left.has(ware.name), ware.name).toBe(false);
  // 440 mm of jar under a lid 460 mm above the floor: 25 mm of floor air, a 16 mm shelf and 25 mm under the lid leave 394.
  expect(left.get("umbrella jar")).toMatch(/^too tall by 46 mm with the lid clearance/);
  expect([...left.values()].every((reason) => reason.length > 10)).toBe(true);
});
