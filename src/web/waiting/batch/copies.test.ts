import { expect, test } from "vitest";
import { sampleBatch } from "../testing/sample-batches.ts";
import { copiesOf } from "./copies.ts";

test("copies are the same in all but the name, and no two names are alike", () => {
  const mug = sampleBatch("a", { name: "Mug", cone: "6" }, { dueOn: "2026-12-01" });
  const other = sampleBatch("b", { name: "Mug, 2" });
  const copies = copiesOf([mug, other], new Set(["Mug", "Mug, 2"]));
  expect(copies.map(({ ware }) => ware.name)).toEqual(["Mug, 3", "Mug, 4"]);
  expect(copies[0]).toMatchObject({ ware: { cone: "6", count: 4 }, dueOn: "2026-12-01" });
  expect(copies[0]).not.toHaveProperty("id");
});
