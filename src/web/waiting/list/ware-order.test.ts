import { describe, expect, test } from "vitest";
import { listed, namesOf, sampleBatch } from "../testing/sample-batches.ts";
import { orderWare } from "./ware-order.ts";

const ware = listed([
  sampleBatch("cup 10", { cone: "6" }, { createdAt: "2026-11-03T08:00:00.000Z" }),
  sampleBatch("cup 2", { cone: "06" }, { dueOn: "2026-12-01", createdAt: "2026-11-01T08:00:00.000Z" }),
  sampleBatch("Bowl", {}, { dueOn: "2026-11-20", createdAt: "2026-11-02T08:00:00.000Z" }),
]);

describe("the list in order", () => {
  test.each([
    ["due", ["Bowl", "cup 2", "cup 10"]],
    ["name", ["Bowl", "cup 2", "cup 10"]],
    ["cone", ["cup 2", "cup 10", "Bowl"]],
    ["newest", ["cup 10", "Bowl", "cup 2"]],
  ] as const)("%s", (order, names) => {
    expect(namesOf(orderWare(ware, order))).toEqual(names);
  });

  test("leaves the list it was given as it was", () => {
    const before = namesOf(ware);
    orderWare(ware, "name");
    expect(namesOf(ware)).toEqual(before);
  });
});
