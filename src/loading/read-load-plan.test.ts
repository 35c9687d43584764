import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { BadInput } from "../measures/bad-input.ts";
import { readLoadPlan } from "./read-load-plan.ts";
import { readLoadRequest } from "./read-load-request.ts";

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../golden/loading-rules/${name}`, import.meta.url), "utf8"));
const request = readLoadRequest(read("request.json"));
const whole = () => {
  const placements = [{ ware: "beaker", xMm: 0, yMm: 0, turnDeg: 0 }];
  const [level] = read("plans.json")["one level"].levels;
  const left = [{ ware: "mug", count: 1, reason: "no room" }];
  return { format: "load-plan/1", levels: [{ ...level, placements }], left };
};

// biome-ignore lint/suspicious/noExplicitAny: tests put anything anywhere
type Anything = any;
const fault = (spoil: (file: Anything) => unknown): string => {
  const file = whole();
  spoil(file);
  try {
    readLoadPlan(file, request);
  } catch (error) {
    if (error instanceof BadInput) return error.message;
    throw error;
  }
  return "none";
};

describe("reading a load plan", () => {
  test("keeps whatever figures another tool reported", () => {
    const figures = { value: 3, byLevel: [1, 2], note: "by hand" };
    expect(readLoadPlan({ ...whole(), figures }, request).figures).toEqual(figures);
    expect(readLoadPlan(whole(), request).figures).toEqual({});
  });

  test.each<[string, (file: Anything) => unknown, RegExp]>([
    [
      "a shelf she has not",
      (f) => (f.levels[0].shelf = "moon"),
      /^levels\[0\]\.shelf: found "moon"; expected a shelf of the request: "full", "half"\.$/,
    ],
    [
      "a piece she has not",
      (f) => (f.levels[0].placements[0].ware = "cup"),
      /^levels\[0\]\.placements\[0\]\.ware: found "cup"; /,
    ],
    ["a piece she has not among those left", (f) => (f.left[0].ware = "cup"), /^left\[0\]\.ware: found "cup"; /],
    [
      "three posts stacked",
      (f) => (f.levels[0].posts[1].heightsMm = [1, 2, 3]),
      /^levels\[0\]\.posts\[1\]\.heightsMm: found a list of 3; /,
    ],
    [
      "a post of no height",
      (f) => (f.levels[0].posts[1].heightsMm = []),
      /^levels\[0\]\.posts\[1\]\.heightsMm: found a list of 0; /,
    ],
    ["NaN", (f) => (f.levels[0].placements[0].xMm = Number.NaN), /^levels\[0\]\.placements\[0\]\.xMm: found NaN; /],
    ["a level below the floor", (f) => (f.levels[0].topMm = -4), /^levels\[0\]\.topMm: found -4; /],
    [
      "an unknown field",
      (f) => (f.levels[0].height = 41),
      /^levels\[0\]\.height: found a field this format does not have/,
    ],
    ["a request", (f) => (f.format = "load-request/1"), /^format: found "load-request\/1"; expected "load-plan\/1"\.$/],
    ["no list of what is left", (f) => delete f.left, /^left: found nothing; expected a list/],
  ])("refuses %s in one sentence that names the field", (_what, spoil, message) => {
    expect(fault(spoil)).toMatch(message);
  });

  test("names only the first of very many kinds", () => {
    const ware = Array.from({ length: 500 }, (_, i) => ({ ...request.ware[0]!, name: `pot ${i}`, count: 1 }));
    const many = { ...request, ware };
    expect(() => readLoadPlan(whole(), many)).toThrow(/found "beaker"; .*"pot 11" or one of 488 more\.$/);
  });
});
