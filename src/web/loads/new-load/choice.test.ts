import { expect, test } from "vitest";
import { batch } from "../testing/example-load.ts";
import { chosenPieces, countsOf, firstChoice, withCount } from "./choice.ts";
import { firingOffers } from "./firing-offers.ts";

const offers = firingOffers([batch("a", { count: 4 }), batch("b"), batch("c", { firingKind: "lustre" })], [], []);
const glaze = offers.find(({ kind }) => kind === "glaze")!;
const lustre = offers.find(({ kind }) => kind === "lustre")!;

test("everything that asks for the firing is chosen, in full", () => {
  const choice = firstChoice(offers, glaze, new Set());
  expect(choice).toEqual({ a: 4, b: 6 });
  expect(chosenPieces(choice)).toBe(10);
  expect(countsOf(choice)).toEqual({ wareIds: ["a", "b"], counts: { a: 4, b: 6 } });
});

test("who came with batches chosen gets those, of whatever firing; another firing's own where none of them belong", () => {
  expect(firstChoice(offers, glaze, new Set(["b"]))).toEqual({ b: 6 });
  expect(firstChoice(offers, glaze, new Set(["b", "c"]))).toEqual({ b: 6, c: 6 });
  expect(firstChoice(offers, lustre, new Set(["b"]))).toEqual({ c: 6 });
});

test("counts are told to the command; none of a batch takes it out", () => {
  const choice = withCount(withCount(firstChoice(offers, glaze, new Set()), "b", 2), "a", 0);
  expect(choice).toEqual({ b: 2 });
  expect(countsOf(choice)).toEqual({ wareIds: ["b"], counts: { b: 2 } });
});
