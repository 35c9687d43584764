import { expect, test } from "vitest";
import { byPlace } from "../judging/judged.ts";
import { firedPieces } from "../judging/pieces.ts";
import { BOWLS, FIRED, firedSheet, MUGS } from "../testing/fired-load.ts";
import { summaryOf } from "./summary.ts";

const pieces = firedPieces(firedSheet(), FIRED, [MUGS, BOWLS], new Map());
const at = "2026-11-25T12:00:00.000Z";
const judged = byPlace([
  { level: 0, placement: 0, grade: "good", faults: [], note: "", at },
  { level: 0, placement: 1, grade: "second", faults: ["pinholes", "crawling"], note: "", at },
]);

test("the summary counts grades and faults, and says what moves where; who was not judged counts as good", () => {
  const summary = summaryOf(pieces, judged, undefined);
  expect(summary.progress).toMatchObject({ good: 1, second: 1, lost: 0 });
  expect(summary.unseen).toBe(1);
  expect(summary.moved).toEqual([
    { becomes: "bisque", name: "bowl", count: 1 },
    { becomes: "finished", name: "mug", count: 1 },
    { becomes: "second", name: "mug", count: 1 },
  ]);
  expect(summary.faults).toEqual([
    { fault: "pinholes", count: 1 },
    { fault: "crawling", count: 1 },
  ]);
});

test("what she said of a piece counts as long as it may still be", () => {
  const said = byPlace([
    { level: 1, placement: 0, grade: "good", faults: [], note: "", at, becomes: "finished" },
    { level: 0, placement: 1, grade: "second", faults: [], note: "", at, becomes: "again" },
    { level: 0, placement: 0, grade: "lost", faults: [], note: "", at, becomes: "second" },
  ]);
  expect(summaryOf(pieces, said, undefined).moved.map(({ becomes, name }) => [becomes, name])).toEqual([
    ["finished", "bowl"],
    ["again", "mug"],
    ["lost", "mug"],
  ]);
});

test("pieces of a batch that is gone move nowhere", () => {
  const without = firedPieces(firedSheet(), FIRED, [MUGS], new Map());
  const summary = summaryOf(without, judged, undefined);
  expect(summary.withoutBatch).toBe(1);
  expect(summary.moved.map(({ name }) => name)).not.toContain("bowl");
});
