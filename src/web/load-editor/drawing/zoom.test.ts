import fc from "fast-check";
import { expect, test } from "vitest";
import { type Box, boxText, MOST_ZOOM, panned, readBox, zoomed, zoomOf } from "./zoom.ts";

const whole: Box = { x: -300, y: -280, width: 600, height: 560 };
const step = fc.record({
  factor: fc.double({ min: 0.2, max: 5, noNaN: true }),
  x: fc.double({ min: 0, max: 1, noNaN: true }),
  y: fc.double({ min: 0, max: 1, noNaN: true }),
  dx: fc.double({ min: -400, max: 400, noNaN: true }),
});

test("however one zooms and pans, the view keeps its shape and stays on the drawing", () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
      let view = whole;
      for (const { factor, x, y, dx } of steps) {
        view = zoomed(whole, view, factor, { x: view.x + x * view.width, y: view.y + y * view.height });
        view = panned(whole, view, dx, -dx);
        expect(view.width / view.height).toBeCloseTo(whole.width / whole.height, 6);
        expect(zoomOf(whole, view)).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(zoomOf(whole, view)).toBeLessThanOrEqual(MOST_ZOOM + 1e-9);
        expect(view.x).toBeGreaterThanOrEqual(whole.x - 1e-6);
        expect(view.x + view.width).toBeLessThanOrEqual(whole.x + whole.width + 1e-6);
        expect(view.y + view.height).toBeLessThanOrEqual(whole.y + whole.height + 1e-6);
      }
    }),
  );
});

test("the place under the fingers stays under them", () => {
  const view = zoomed(whole, whole, 3, { x: 50, y: -40 });
  expect((50 - view.x) / view.width).toBeCloseTo((50 - whole.x) / whole.width, 9);
  expect((-40 - view.y) / view.height).toBeCloseTo((-40 - whole.y) / whole.height, 9);
});

test("a box is written and read as SVG has it", () => {
  expect(readBox(boxText(whole))).toEqual(whole);
});
