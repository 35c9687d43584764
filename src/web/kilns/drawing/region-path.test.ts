import { describe, expect, test } from "vitest";
import { chamberRegion, placedRegion, shelfRegion } from "../../../kiln/convex-region.ts";
import { regionPath } from "./region-path.ts";

const numbers = (path: string): number[] => path.match(/-?\d+(\.\d+)?(e-?\d+)?/g)!.map(Number);

describe("an outline as a path", () => {
  test("of a box goes round its corners, the far side up", () => {
    const box = chamberRegion({ shape: "rectangle", widthMm: 200, lengthMm: 100, depthMm: 1 });
    expect(regionPath(box)).toBe("M 100 -50 L -100 -50 L -100 50 L 100 50 Z");
  });

  test("of a disc touches its four sides", () => {
    const disc = chamberRegion({ shape: "round", diameterMm: 200, depthMm: 1 });
    expect(regionPath(disc)).toBe("M -100 0 A 100 100 0 1 0 100 0 A 100 100 0 1 0 -100 0 Z");
  });

  // SVG's sweep 1 turns clockwise as drawn, and an arc of half a circle with it bulges to the left of its way.
  test.each([
    [0, [-100, 0], [100, 0]],
    [90, [0, 100], [0, -100]],
    [180, [100, 0], [-100, 0]],
  ])("of a half disc turned %d° has its body on the far side of its straight side", (turnDeg, from, to) => {
    const shelf = { name: "half", shape: "half-disc", diameterMm: 200, thicknessMm: 10, count: 1 } as const;
    const path = numbers(regionPath(placedRegion(shelfRegion(shelf), 0, 0, turnDeg)));
    expect(path[0]! - from[0]!).toBeCloseTo(0, 9);
    expect(path[1]! - from[1]!).toBeCloseTo(0, 9);
    expect(path.slice(2, 7)).toEqual([100, 100, 0, 0, 1]);
    expect(path[7]! - to[0]!).toBeCloseTo(0, 9);
    expect(path[8]! - to[1]!).toBeCloseTo(0, 9);
  });
});
