import { expect, test } from "vitest";
import { NOTHING_YET, remember, remembered } from "./memory.ts";
import { captionOf, isOfPiece } from "./photos/piece-caption.ts";
import { stopNextTo, stopsOf } from "./stops.ts";

function storage() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
  };
}

test("what was remembered comes back, for that firing alone", () => {
  const here = storage();
  const memory = { here: 2, meantCone: "6" };
  remember("f1", memory, here);
  expect(remembered("f1", here)).toEqual(memory);
  expect(remembered("f2", here)).toEqual(NOTHING_YET);
});

test.each(["nonsense", "null", '{"here":true,"meantCone":null}', '{"here":1,"meantCone":6}'])(
  "what another has written there is not believed: %s",
  (text) => {
    expect(remembered("f1", { getItem: () => text })).toEqual(NOTHING_YET);
  },
);

test("a browser that keeps nothing is no trouble", () => {
  const refuses = () => {
    throw new Error("full");
  };
  expect(remember("f1", NOTHING_YET, { setItem: refuses })).toBe(false);
  expect(remembered("f1", { getItem: refuses })).toEqual(NOTHING_YET);
});

test("the way leads from the opening over the shelves to the end", () => {
  const stops = stopsOf([2, 1, 0]);
  expect(stopNextTo(stops, "opening", 1)).toBe(2);
  expect(stopNextTo(stops, 0, 1)).toBe("summary");
  expect(stopNextTo(stops, "summary", 1)).toBeNull();
  expect(stopNextTo(stops, "opening", -1)).toBeNull();
});

test("a photo is found again by its piece, whatever she wrote after it; another piece is not taken for it", () => {
  const piece = { level: 1, number: 1, name: "mug" };
  expect(captionOf(piece)).toBe("Shelf 2, piece 1: mug");
  expect(isOfPiece("Shelf 2, piece 1: mug; crawled at the rim", piece)).toBe(true);
  expect(isOfPiece("Shelf 2, piece 1: mug, large", piece)).toBe(false);
  expect(isOfPiece("Shelf 2, piece 11: mug", piece)).toBe(false);
});
