import { expect, test } from "vitest";
import { readLoadPlan } from "../../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../../loading/read-load-request.ts";
import { batch, load, planOf } from "../../loads/testing/example-load.ts";
import { factsOf } from "./load-facts.ts";

const request = readLoadRequest(load("l1", [batch("mug", { count: 6 }), batch("bowl", { count: 2 })], null).request);
const plan = readLoadPlan(planOf(["mug", "mug", "bowl"]), request);

test("where every piece is worth the same, worth is not told twice", () => {
  expect(factsOf(request, plan, "planned")).toEqual(["Planned", "3 of 8 in"]);
  expect(factsOf(request, { ...plan, figures: { valueBound: 5 } }, "loading")).toEqual([
    "Being loaded",
    "3 of 8 in",
    "at most 5 could ever fit",
  ]);
});

test("where pieces are worth different things, worth and its bound are told", () => {
  const dearer = {
    ...request,
    ware: request.ware.map((ware) => ({ ...ware, value: ware.name === "bowl" ? 12.5 : 1 })),
  };
  expect(factsOf(dearer, { ...plan, figures: { valueBound: 31 } }, "planned").slice(1)).toEqual([
    "3 of 8 in",
    "worth 14.5",
    "at most worth 31 could ever fit",
  ]);
});
