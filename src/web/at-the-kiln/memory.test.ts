import { describe, expect, test } from "vitest";
import { handMadeLoad } from "../../sheets/testing/sheet-cases.ts";
import { remember, remembered } from "./memory.ts";
import { nothingDone } from "./ticks.ts";

const { plan } = handMadeLoad();

function shelf(first: Record<string, string> = {}) {
  const kept = new Map(Object.entries(first));
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

describe("what this device remembers at the kiln", () => {
  const at = "2026-11-25T10:00:00.000Z";
  const memory = {
    ...nothingDone(plan),
    done: { "before-0": at },
    waiting: { "0.1": { at, in: true, ware: "mug" } },
    here: "0.1",
  };

  test("comes back after a reload, each load's own", () => {
    const storage = shelf();
    expect(remember("l1", memory, storage)).toBe(true);
    expect(remembered("l1", plan, storage)).toEqual(memory);
    expect(remembered("l2", plan, storage)).toEqual(nothingDone(plan));
  });

  test.each([
    ["nothing", ""],
    ["half a line", '{"prints":['],
    ["something else", '"yes"'],
    ["a tick without a moment", JSON.stringify({ ...memory, waiting: { "0.1": { in: true, ware: "mug" } } })],
    ["an old shape", JSON.stringify({ done: {} })],
  ])("is nothing done where %s is kept", (_, text) => {
    const storage = shelf();
    remember("l1", memory, storage);
    for (const key of storage.kept.keys()) storage.kept.set(key, text);
    expect(remembered("l1", plan, storage)).toEqual(nothingDone(plan));
  });

  test("is said to be not kept where the browser keeps nothing", () => {
    const full = {
      setItem: () => {
        throw new Error("full");
      },
    };
    expect(remember("l1", memory, full)).toBe(false);
  });
});
