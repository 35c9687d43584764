import { expect, test } from "vitest";
import { swipeOf } from "./use-swipe.ts";

test.each([
  [-120, 10, "left"],
  [90, -30, "right"],
  [40, 0, null],
  [-80, 60, null],
  [10, 300, null],
])("a finger that went %d across and %d along: %s", (across, along, way) => expect(swipeOf(across, along)).toBe(way));
