import { expect, test } from "vitest";
import { MARKS, type Miss, missesOf } from "./testing/watch-accuracy.ts";
import { hiddenFiring, rootMeanSquare } from "./testing/watched-hidden.ts";

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
const ALL: readonly Miss[] = SEEDS.flatMap((seed) => missesOf(hiddenFiring(seed)));

const at = (what: Miss["what"], mark: number): Miss[] => ALL.filter((each) => each.what === what && each.mark === mark);
const model = (what: Miss["what"], mark: number): number =>
  rootMeanSquare(at(what, mark).map((each) => each.byModel ?? Number.POSITIVE_INFINITY));
/** Only where it says anything: the kinder judgement of it. */
const line = (what: Miss["what"], mark: number): number => {
  const told = at(what, mark).flatMap((each) => (each.byLine === null ? [] : [each.byLine]));
  return told.length === 0 ? Number.POSITIVE_INFINITY : rootMeanSquare(told);
};

test("eight kilns with hidden parameters: time to the cone and to opening beat a straight line at a quarter, half and three quarters", () => {
  for (const what of ["cone", "opening"] as const) {
    for (const mark of MARKS) {
      console.log(
        `${what} at ${100 * mark} %: off by ${model(what, mark).toFixed(1)} min (root mean square), straight line ${line(what, mark).toFixed(1)}`,
      );
    }
    for (const mark of [0.25, 0.5, 0.75])
      expect(model(what, mark), `${what} at ${mark}`).toBeLessThan(line(what, mark) / 2);
  }
});

test("both get better as the firing goes on", () => {
  expect(model("cone", 0.9)).toBeLessThan(model("cone", 0.25) / 2);
  expect(model("opening", 0.5)).toBeLessThan(model("opening", 0.25));
  expect(model("opening", 0.75)).toBeLessThan(model("opening", 0.5) / 2);
  expect(model("opening", 0.75)).toBeLessThan(30);
  expect(model("cone", 0.75)).toBeLessThan(10);
});

test("the spreads are honest: most truths lie within two of them, none beyond four", () => {
  const sigmas = ALL.map((each) => Math.abs(each.inSigmas ?? Number.POSITIVE_INFINITY));
  const within = sigmas.filter((each) => each <= 2).length / sigmas.length;
  console.log(`${(100 * within).toFixed(0)} % within two spreads, worst ${Math.max(...sigmas).toFixed(1)}`);
  expect(within).toBeGreaterThan(0.9);
  expect(Math.max(...sigmas)).toBeLessThan(4);
});
