import { expect, test } from "vitest";
import { pieceBecomes } from "../../../studio/firings/piece-becomes.ts";
import { FAULTS } from "../../../studio/records/faults.ts";
import { BOWLS, FIRED, firedSheet, MUGS } from "../testing/fired-load.ts";
import { pieceFired } from "./becomes.ts";
import { FAULT_LOOKS, faultsFor } from "./fault-words.ts";
import { byPlace, neighbourPiece, nextUnjudged, progressOf, unjudged } from "./judged.ts";
import { firedPieces, unpackingOrder } from "./pieces.ts";

const pieces = firedPieces(firedSheet(), FIRED, [MUGS, BOWLS], new Map());
const [bowl, near, far] = pieces;
const said = (piece: typeof bowl, grade: "good" | "second" | "lost") => ({
  ...{ level: piece?.level ?? -1, placement: piece?.placement ?? -1, grade },
  ...{ faults: [], note: "", at: "2026-11-25T12:00:00.000Z" },
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

test("after a piece comes the next of its shelf that nobody judged, then those before it", () => {
  const none = byPlace([]);
  expect(near && nextUnjudged(pieces, none, near)).toBe(far);
  expect(far && nextUnjudged(pieces, none, far)).toBe(near);
  const judged = byPlace([said(near, "good")]);
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
  const judged = byPlace([said(bowl, "lost"), said(near, "good"), { ...said(far, "good"), placement: 9 }]);
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

test("a piece goes on as its batch says; one of a batch that is gone, as if it had been glazed", () => {
  expect(pieceBecomes(pieceFired("good", BOWLS, "bisque"))).toBe("bisque");
  expect(pieceBecomes(pieceFired("good", MUGS, "glaze"))).toBe("finished");
  expect(pieceBecomes(pieceFired("second", null, undefined))).toBe("second");
});
