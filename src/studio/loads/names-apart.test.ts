import { expect, test } from "vitest";
import type { WareRecord } from "../records/ware-record.ts";
import { namesApart } from "./names-apart.ts";

const batch = (
  id: string,
  name: string,
  more: Partial<WareRecord["ware"]> = {},
  changes: Partial<WareRecord> = {},
): WareRecord => ({
  ...{ id, stage: "glazed", firingKind: "glaze", dueOn: null, ownerNote: "", clayBodyId: null, glazeId: null },
  ...{ createdAt: "2026-11-20T08:30:00.000Z", changedAt: "2026-11-20T08:30:00.000Z" },
  ware: { name, count: 2, diameterMm: 80, heightMm: 90, ...more },
  ...changes,
});
const namesOf = (...args: Parameters<typeof namesApart>): string[] => {
  const { names } = namesApart(...args);
  return args[0].map(({ id }) => names.get(id) as string);
};

test("a name that is one batch's own stays as it is", () => {
  expect(namesApart([batch("a", "mug"), batch("b", "bowl")])).toEqual({
    names: new Map([
      ["a", "mug"],
      ["b", "bowl"],
    ]),
    notes: [],
  });
});

test("batches of one name are told apart by what differs between all of them, and she is told", () => {
  const moss = { id: "g", name: "moss", cones: null, runs: false, note: "", createdAt: "", changedAt: "" };
  const two = [batch("a", "mug", { glaze: "ash" }), batch("b", "mug", {}, { glazeId: "g" })];
  expect(namesOf(two, [moss])).toEqual(["mug, ash", "mug, moss"]);
  expect(namesApart(two, [moss]).notes).toEqual([
    "Several batches are called mug; in this load they are mug, ash and mug, moss.",
  ]);
  expect(namesOf([batch("a", "mug"), batch("b", "mug", { heightMm: 110 })])).toEqual([
    "mug, 80 × 90 mm",
    "mug, 80 × 110 mm",
  ]);
  expect(namesOf([batch("a", "mug"), batch("b", "mug"), batch("c", "mug")])).toEqual(["mug", "mug, 2", "mug, 3"]);
});

test("names in a load already stay, and no new one takes them", () => {
  const taken = new Map([["old", "mug"]]);
  expect(namesOf([batch("old", "mug", { heightMm: 99 }), batch("new", "mug")], [], taken)).toEqual(["mug", "mug, 2"]);
  expect(namesOf([batch("a", "x, 2"), batch("b", "x"), batch("c", "x")])).toEqual(["x, 2", "x", "x, 3"]);
});

test("long names stay short enough to be names, and apart", () => {
  const long = "w".repeat(120);
  const names = namesOf([batch("a", long), batch("b", long), batch("c", long, { cone: "6" })]);
  expect(new Set(names).size).toBe(3);
  for (const name of names) expect(name.length).toBeLessThanOrEqual(120);
});
