import { expect, test } from "vitest";
import { batch, load } from "../testing/example-load.ts";
import { becameCommands, unpackedBatches } from "./became.ts";

const mugs = batch("mug", { count: 6 });
const raw = batch("raw", { count: 2, stage: "greenware", firingKind: "bisque" });
const newId = () => "new";

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

test("a whole batch is changed; of a batch half fired, the fired ones become a batch of their own", () => {
  const whole = { batch: raw, count: 2, likely: "bisque" } as const;
  expect(becameCommands(whole, "bisque", newId)).toEqual([
    { name: "change-ware", input: { ids: ["raw"], change: { stage: "bisque", firingKind: "glaze" } } },
  ]);
  const half = becameCommands({ ...whole, batch: mugs, count: 2 }, "finished", newId);
  expect(half[0]).toEqual({ name: "change-ware", input: { ids: ["mug"], change: { ware: { count: 4 } } } });
  expect(half[1]).toMatchObject({
    name: "add-ware",
    input: { ware: [{ id: "new", stage: "finished", firingKind: null, ware: { name: "mug", count: 2 } }] },
  });
  expect(half[1]?.input).not.toHaveProperty(["ware", 0, "createdAt"]);
});

test("what is to be fired again waits as before; what was lost goes", () => {
  const some = { batch: mugs, count: 2, likely: "finished" } as const;
  expect(becameCommands(some, "again", newId)).toEqual([]);
  expect(becameCommands(some, "lost", newId)).toEqual([
    { name: "change-ware", input: { ids: ["mug"], change: { ware: { count: 4 } } } },
  ]);
  expect(becameCommands({ ...some, count: 6 }, "lost", newId)).toEqual([
    { name: "remove-ware", input: { ids: ["mug"] } },
  ]);
});
