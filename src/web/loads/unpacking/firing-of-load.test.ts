import { expect, test } from "vitest";
import { firingOfLoad } from "./firing-of-load.ts";

const firing = (id: string, loadId: string | null, state: "planned" | "cooling" | "finished", hour: number | null) => ({
  ...{ id, loadId, state },
  startedAt: hour === null ? null : `2026-11-20T0${hour}:00:00.000Z`,
});

test("a load is unpacked by the latest firing it went through; one only planned, or another load's, is none", () => {
  const firings = [
    firing("early", "l", "finished", 1),
    firing("late", "l", "cooling", 7),
    firing("planned", "l", "planned", null),
    firing("other", "m", "finished", 9),
    firing("empty", null, "finished", 9),
  ];
  expect(firingOfLoad("l", firings)?.id).toBe("late");
  expect(firingOfLoad("m", firings.slice(0, 3))).toBeNull();
  expect(firingOfLoad("l", firings.slice(2))).toBeNull();
});
