import { expect, test } from "vitest";
import type { HistoryEntry } from "../../studio/api/contract.ts";
import { nextUndoRedo } from "./undo-next.ts";

const entry = (id: string, undone: boolean): HistoryEntry => ({
  id,
  at: "2026-11-25T12:00:00.000Z",
  scope: "ware",
  command: "change-ware",
  summary: `Did ${id}`,
  undone,
});
const next = (...history: HistoryEntry[]) => {
  const { undo, redo } = nextUndoRedo(history);
  return [undo?.id ?? null, redo?.id ?? null];
};

test("undo takes the newest that stands; redo the one that was undone last", () => {
  expect(next()).toEqual([null, null]);
  expect(next(entry("b", false), entry("a", false))).toEqual(["b", null]);
  expect(next(entry("c", true), entry("b", true), entry("a", false))).toEqual(["a", "b"]);
  expect(next(entry("b", true), entry("a", true))).toEqual([null, "a"]);
});

test("something new ends the redoing of what was undone before it", () => {
  expect(next(entry("c", false), entry("b", true), entry("a", false))).toEqual(["c", null]);
});
