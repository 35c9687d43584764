import { expect, test } from "vitest";
import type { LoadRecord } from "../records/load-record.ts";
import { promisedPieces, waitingOf } from "./promised.ts";

const load = (id: string, cups: number, changes: Partial<LoadRecord> = {}): LoadRecord =>
  ({
    id,
    name: `load ${id}`,
    state: "planned",
    sources: [{ ware: "cup", wareId: "w" }],
    plan: {
      levels: [
        { placements: Array.from({ length: cups }, () => ({ ware: "cup" })) },
        { placements: [{ ware: "other" }] },
      ],
    },
    ...changes,
  }) as unknown as LoadRecord;
const counted = (...loads: LoadRecord[]) =>
  promisedPieces(loads)
    .get("w")
    ?.map(({ loadId, count }) => [loadId, count]) ?? [];

test("pieces that stand in a load that is not unpacked are promised to it", () => {
  expect(counted(load("a", 2), load("b", 1, { state: "fired" }), load("c", 5, { state: "unpacked" }))).toEqual([
    ["a", 2],
    ["b", 1],
  ]);
  expect(counted(load("a", 2, { plan: null }))).toEqual([]);
});

test("alternatives promise the same pieces once, and none once another of them is being loaded", () => {
  const [first, second] = [load("a", 2), load("b", 4, { alternativeOf: "a" })];
  expect(counted(first, second, load("c", 1))).toEqual([
    ["b", 4],
    ["c", 1],
  ]);
  expect(counted({ ...first, state: "loading" }, second)).toEqual([["a", 2]]);
  expect(counted({ ...first, state: "unpacked" }, second)).toEqual([]);
});

test("what waits is what is not promised, never less than none", () => {
  const promised = [{ loadId: "a", loadName: "load a", count: 4 }];
  expect(waitingOf(6, promised)).toEqual({ waits: 2, promised });
  expect(waitingOf(3, promised).waits).toBe(0);
  expect(waitingOf(3)).toEqual({ waits: 3, promised: [] });
});
