import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { draggedAngleDeg, draggedHeightMm, keyMove } from "./wall-drag.ts";

describe("dragging round the wall", () => {
  test.each([
    [100, 0, 0],
    [0, 100, 90],
    [-100, 0, 180],
    [0, -100, 270],
    [100, 2, 0],
    [100, -2, 0],
    [100, 9, 5],
    [100, 42, 22.5],
  ])("to (%d, %d) is %d°", (x, y, deg) => expect(draggedAngleDeg(x, y)).toBe(deg));

  test("on the axis is no direction", () => expect(draggedAngleDeg(0.3, -0.4)).toBeNull());

  test("stays within two degrees of the finger, whole or on a quarter hour, however far out it is", () => {
    const every = fc.property(
      fc.double({ min: 0, max: 359.99, noNaN: true }),
      fc.double({ min: 2, max: 900, noNaN: true }),
      (deg, far) => {
        const found = draggedAngleDeg(far * Math.cos((deg * Math.PI) / 180), far * Math.sin((deg * Math.PI) / 180));
        expect(found).not.toBeNull();
        const apart = Math.abs((((((found as number) - deg) % 360) + 540) % 360) - 180);
        expect(apart).toBeLessThanOrEqual(2 + 1e-9);
        expect(Number.isInteger(found) || (found as number) % 7.5 === 0).toBe(true);
        expect(found).toBeLessThan(360);
      },
    );
    fc.assert(every);
  });
});

describe("dragging up and down", () => {
  test.each([
    [203, 460, 205],
    [-20, 460, 0],
    [700, 460, 460],
    [463, 462, 460],
  ])("to %d of %d is %d", (height, depth, found) => expect(draggedHeightMm(height, depth)).toBe(found));

  test("goes by quarters of an inch where she reads inches", () => {
    expect(draggedHeightMm(100, 460, true)).toBeCloseTo(101.6, 9);
    expect(draggedHeightMm(900, 460, true)).toBeLessThanOrEqual(460);
  });
});

test("arrow keys move by a degree or five millimetres, with Shift by half an hour or an inch; others not", () => {
  expect(keyMove("ArrowRight", false)).toEqual({ turnDeg: -1, upMm: 0 });
  expect(keyMove("ArrowLeft", true)).toEqual({ turnDeg: 15, upMm: 0 });
  expect(keyMove("ArrowUp", false)).toEqual({ turnDeg: 0, upMm: 5 });
  expect(keyMove("ArrowDown", true)).toEqual({ turnDeg: 0, upMm: -25 });
  expect(keyMove("a", false)).toBeNull();
});
