import { describe, expect, test } from "vitest";
import { sampleBatch } from "../testing/sample-batches.ts";
import { changeBetween, changed } from "./batch-change.ts";
import { eachOnReaching, onReaching } from "./next-stage.ts";

const cup = sampleBatch("cup", { cone: "6", glaze: "rust", handle: null }, { dueOn: "2026-12-01" });
const { id: _, createdAt: __, changedAt: ___, ...batch } = cup;

describe("what changes in a batch", () => {
  test("is nothing where nothing differs; a part left out is the same as none", () => {
    const { handle: ____, ...bare } = cup.ware;
    expect(changeBetween(cup, batch)).toBeNull();
    expect(changeBetween(cup, { ...batch, ware: bare })).toBeNull();
  });

  test("names the fields that differ and no others, and takes out what is gone", () => {
    const { glaze: ____, ...bare } = cup.ware;
    const after = { ...batch, dueOn: null, ware: { ...bare, count: 9 } };
    const change = changeBetween(cup, after);
    expect(change).toEqual({ dueOn: null, ware: { count: 9, glaze: null } });
    expect(changed(cup, change as NonNullable<typeof change>)).toEqual({
      ...cup,
      ...after,
      ware: { ...after.ware, handle: null },
    });
  });
});

describe("a batch that has come further", () => {
  const glaze = { id: "rain", name: "Rain", runs: false, note: "", createdAt: cup.createdAt, changedAt: cup.changedAt };
  const raw = sampleBatch("jar", { cone: "06" }, { stage: "greenware", firingKind: "bisque" });

  test("bisqued, waits for its glaze firing, at its recorded glaze's cone where that is one", () => {
    expect(onReaching("bisque", raw, undefined)).toEqual({
      stage: "bisque",
      firingKind: "glaze",
      ware: { cone: null },
    });
    const one = { ...glaze, cones: { coolest: "6", hottest: "6" } as const };
    expect(onReaching("bisque", raw, one)).toMatchObject({ ware: { cone: "6" } });
    const several = { ...glaze, cones: { coolest: "5", hottest: "6" } as const };
    expect(onReaching("bisque", raw, several)).toMatchObject({ ware: { cone: null } });
  });

  test("glazed, keeps the cone it waited for; finished, waits for nothing", () => {
    expect(onReaching("glazed", cup, undefined)).toEqual({ stage: "glazed", firingKind: "glaze" });
    expect(onReaching("finished", cup, undefined)).toEqual({ stage: "finished", firingKind: null });
  });

  test("many at once: those that change alike are changed together", () => {
    const records = [raw, { ...raw, id: "lid" }, { ...cup, id: "cup" }];
    expect(eachOnReaching("bisque", records, [])).toEqual([
      { ids: ["jar", "lid"], change: { stage: "bisque", firingKind: "glaze", ware: { cone: null } } },
      { ids: ["cup"], change: { stage: "bisque", firingKind: "glaze" } },
    ]);
  });
});
