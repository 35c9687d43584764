import { expect, test } from "vitest";
import { batch, load } from "../testing/example-load.ts";
import { toldBatches, unpackedBatches } from "./became.ts";

const mugs = batch("mug", { count: 6 });
const raw = batch("raw", { count: 2, stage: "greenware", firingKind: "bisque" });

test("what came out is what stood in the plan, of batches still kept", () => {
  const fired = load("l", [mugs, raw], ["mug", "mug", "raw", "mug"], { state: "fired" });
  expect(unpackedBatches(fired, [mugs, raw]).map(({ batch: { id }, count, likely }) => [id, count, likely])).toEqual([
    ["mug", 3, "finished"],
    ["raw", 1, "bisque"],
  ]);
  expect(unpackedBatches(fired, [raw])).toHaveLength(1);
  expect(unpackedBatches({ ...fired, plan: null }, [mugs, raw])).toEqual([]);
});

test("never more pieces than the batch has left", () => {
  const fired = load(
    "l",
    [mugs],
    Array.from({ length: 6 }, () => "mug"),
  );
  expect(unpackedBatches(fired, [batch("mug", { count: 4 })])[0]?.count).toBe(4);
});

test("the studio is told every batch as the choice stood: her word, else what was likely", () => {
  const fired = load("l", [mugs, raw], ["mug", "raw"], { state: "fired" });
  expect(toldBatches(unpackedBatches(fired, [mugs, raw]), { mug: "second" })).toEqual([
    { wareId: "mug", becomes: "second" },
    { wareId: "raw", becomes: "bisque" },
  ]);
});
