import { expect, test } from "vitest";
import { listAfter } from "./list-after.ts";

const [a, b, c] = [{ id: "a" }, { id: "b" }, { id: "c" }];

test("a changed record keeps its place, a new one goes to the end, one taken out is gone", () => {
  const b2 = { id: "b" };
  const d = { id: "d" };
  expect(listAfter([a, b, c], { b: b2, d, a: null, x: null })).toEqual([b2, c, d]);
  expect(listAfter([a, b], { b: b2 })[1]).toBe(b2);
});

test("the list is the same one where nothing in it is another: no screen is drawn again for nothing", () => {
  const list = [a, b];
  expect(listAfter(list, { b, x: null })).toBe(list);
});
