import { expect, test } from "vitest";
import { readLoadRequest } from "../../../loading/read-load-request.ts";
import { batch, load, planOf } from "../testing/example-load.ts";
import { wayFigures } from "./figures.ts";
import { wayName, weighedFor } from "./ways.ts";

const mugs = batch("mug");
const bowls = batch("bowl");
const { request } = load("l", [{ ...mugs, ware: { ...mugs.ware, value: 2 } }, bowls], null);
const whole = readLoadRequest(request);

test("figures are of the plan as it stands, worth by one measure for all ways", () => {
  const plan = { ...planOf(["mug", "mug", "bowl"], [["bowl", 5]]), figures: { pieces: 99 } };
  const figures = wayFigures(whole, plan, new Map([["mug", 3]]));
  expect(figures).toMatchObject({
    placed: 3,
    waiting: 12,
    worth: 7,
    tallestMm: 96,
    leftOut: [{ ware: "bowl", count: 5 }],
  });
  // Three discs of 86 mm on one of 390 mm.
  expect(figures.fillByLevel[0]).toBeCloseTo((3 * 86 ** 2) / 390 ** 2, 12);
});

test("an empty load has no tallest piece", () => {
  expect(wayFigures(whole, { ...planOf([]), figures: {} }, new Map())).toMatchObject({ placed: 0, tallestMm: null });
});

test("each way weighs the pieces as it says, and changes nothing else of the request", () => {
  const values = (way: Parameters<typeof weighedFor>[0], due: [string, string][] = []) =>
    weighedFor(way, request, new Map(due)).ware.map(({ value }) => value);
  expect(weighedFor("again", request, new Map())).toBe(request);
  expect(values("most")).toEqual([1, 1]);
  const [mug, bowl] = values("due", [["bowl", "2026-12-01"]]) as [number, number];
  expect(bowl).toBeGreaterThan(mug);
  expect(mug).toBe(2);
  expect(values("due")).toEqual([2, 1]);
  const big = { ...request, ware: [mugs.ware, { ...bowls.ware, diameterMm: 300 }] };
  const [small, large] = weighedFor("large", big, new Map()).ware.map(({ value }) => value) as [number, number];
  expect(large).toBeGreaterThan(10 * small);
  const { ware: _, ...others } = weighedFor("most", request, new Map());
  expect({ ...others, ware: request.ware }).toEqual(request);
});

test("another way has a name of its own", () => {
  expect(wayName("Glaze", "most", [])).toBe("Glaze, most pieces");
  expect(wayName("Glaze", "again", ["Glaze, again"])).toBe("Glaze, again 2");
});
