import { expect, test } from "vitest";
import { FAULTS } from "../../../studio/records/faults.ts";
import { BOWLS, FIRED, firedSheet, MUGS } from "../testing/fired-load.ts";
import { becomesOf, likelyBecomes, mayBecome } from "./becomes.ts";
import { FAULT_LOOKS, faultsFor } from "./fault-words.ts";
import { byPlace, neighbourPiece, nextUnjudged, outcomesAfter, progressOf, unjudged } from "./judged.ts";
import { firedPieces, unpackingOrder } from "./pieces.ts";

const pieces = firedPieces(firedSheet(), FIRED, [MUGS, BOWLS], new Map());
const [bowl, near, far] = pieces;
const at = (second: number): string => `2026-11-25T12:00:0${second}.000Z`;
const said = (piece: typeof bowl, grade: "good" | "second" | "lost" | null, second: number) => ({
  level: piece?.level ?? -1,
  placement: piece?.placement ?? -1,
  grade,
  at: at(second),
});

test("the top shelf comes out first, and on it what stands nearest before what stands behind", () => {
  expect(unpackingOrder(firedSheet())).toEqual([1, 0]);
  expect(pieces.map(({ key, name }) => [key, name])).toEqual([
    ["1.0", "bowl"],
    ["0.1", "mug"],
    ["0.0", "mug"],
  ]);
  // The numbers are the printed sheet's: the far mug was set down first.
  expect([near?.number, far?.number]).toEqual([2, 1]);
});

test("pieces know their batch, and its recorded glaze by name; a batch that is gone leaves the piece", () => {
  const glazed = { ...MUGS, glazeId: "g1" };
  const named = firedPieces(firedSheet(), FIRED, [glazed], new Map([["g1", "celadon"]]));
  expect(named.map(({ batch, glaze }) => [batch?.id ?? null, glaze])).toEqual([
    [null, ""],
    ["mug", "celadon"],
    ["mug", "celadon"],
  ]);
});

test("of two words on one piece the later counts, in whatever order they come", () => {
  const words = [said(near, "good", 1), said(near, "lost", 3), said(near, "second", 2), said(far, "good", 1)];
  for (const order of [words, [...words].reverse()]) {
    expect(outcomesAfter([], order).map(({ placement, grade }) => [placement, grade])).toEqual([
      [0, "good"],
      [1, "lost"],
    ]);
  }
});

test("a word taken back is gone, unless a later one is there", () => {
  const once = outcomesAfter([], [said(near, "lost", 2)]);
  expect(outcomesAfter(once, [said(near, null, 3)])).toEqual([]);
  expect(outcomesAfter(once, [said(near, null, 1)])).toEqual(once);
});

test("a fault named twice is kept once", () => {
  const faults = ["crawling", "crawling", "pinholes"] as const;
  expect(outcomesAfter([], [{ ...said(near, "second", 1), faults }])[0]?.faults).toEqual(["crawling", "pinholes"]);
});

test("after a piece comes the next of its shelf that nobody judged, then those before it", () => {
  const none = byPlace([]);
  expect(near && nextUnjudged(pieces, none, near)).toBe(far);
  expect(far && nextUnjudged(pieces, none, far)).toBe(near);
  const judged = byPlace(outcomesAfter([], [said(near, "good", 1)]));
  expect(far && nextUnjudged(pieces, judged, far)).toBeNull();
  expect(bowl && nextUnjudged(pieces, none, bowl)).toBeNull();
  expect(unjudged(pieces, judged)).toEqual([bowl, far]);
});

test("stepping goes over shelves and stays at either end", () => {
  expect(neighbourPiece(pieces, bowl?.key ?? "", 1)).toBe(near);
  expect(neighbourPiece(pieces, far?.key ?? "", 1)).toBe(far);
  expect(neighbourPiece(pieces, bowl?.key ?? "", -1)).toBe(bowl);
  expect(neighbourPiece(pieces, null, 1)).toBe(bowl);
  expect(neighbourPiece([], null, 1)).toBeNull();
});

test("progress counts each grade, and only pieces of the plan", () => {
  const judged = byPlace(
    outcomesAfter([], [said(bowl, "lost", 1), said(near, "good", 1), { ...said(far, "good", 1), placement: 9 }]),
  );
  expect(progressOf(pieces, judged)).toEqual({ judged: 2, pieces: 3, good: 1, second: 0, lost: 1 });
});

test("every fault has its line, and a bisque firing is asked about glaze last", () => {
  expect(Object.keys(FAULT_LOOKS).sort()).toEqual([...FAULTS].sort());
  for (const kind of ["bisque", "glaze", undefined]) {
    const { first, others } = faultsFor(kind);
    expect([...first, ...others].sort()).toEqual([...FAULTS].sort());
    expect(others.includes("crazing")).toBe(kind === "bisque");
  }
});

test("what is raw goes on to be glazed, what is glazed is finished, what is lost is gone", () => {
  expect(likelyBecomes("good", BOWLS, "bisque")).toBe("bisque");
  expect(likelyBecomes("good", MUGS, "glaze")).toBe("finished");
  expect(likelyBecomes("second", MUGS, "glaze")).toBe("second");
  expect(likelyBecomes("lost", BOWLS, "bisque")).toBe("lost");
});

test("what she said holds only as long as it may still be", () => {
  expect(becomesOf("again", "second", MUGS, "glaze")).toBe("again");
  expect(becomesOf("second", "lost", MUGS, "glaze")).toBe("lost");
  expect(becomesOf(undefined, "good", BOWLS, "bisque")).toBe("bisque");
  expect(mayBecome("good", BOWLS, "bisque")).toEqual(["bisque", "finished", "again"]);
});
