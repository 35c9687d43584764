import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLoadRequest } from "../loading/read-load-request.ts";
import { FORM_NAMES, formOutline } from "./forms.ts";
import { pieceSolid } from "./solid.ts";

const readWith = (ware: object) =>
  readLoadRequest({
    format: "load-request/1",
    kiln: { name: "any", chamber: { shape: "round", diameterMm: 600, depthMm: 600 } },
    furniture: {
      shelves: [{ name: "full", shape: "disc", diameterMm: 500, thicknessMm: 16, count: 1 }],
      posts: [{ heightMm: 50, widthMm: 35, shape: "round", count: 3 }],
    },
    ware: [ware],
  }).ware[0];

describe("a form and three numbers make an outline", () => {
  test.each(FORM_NAMES)(
    "%s: whatever its size, the file format takes it and its solid is as tall and as wide as she measured",
    (form) => {
      const size = fc.record({
        diameterMm: fc.double({ min: 20, max: 480, noNaN: true }),
        heightMm: fc.double({ min: 5, max: 550, noNaN: true }),
      });
      fc.assert(
        fc.property(size, (measured) => {
          const ware = readWith({ name: "piece", count: 1, form, ...formOutline(form, measured) });
          if (!ware) throw new Error("not read");
          const solid = pieceSolid(ware);
          expect(solid.heightMm).toBeCloseTo(measured.heightMm, 6);
          const widest = 2 * Math.max(...solid.rings.map(([, radius]) => radius));
          const cornered = form === "box" || form === "tile";
          expect(widest).toBeCloseTo(
            cornered ? Math.hypot(measured.diameterMm, measured.diameterMm) : measured.diameterMm,
            1,
          );
        }),
        { numRuns: 60 },
      );
    },
  );

  test("a jug has a handle and, opposite it, a spout; a bowl has neither", () => {
    const jug = formOutline("jug", { diameterMm: 100, heightMm: 140 });
    expect([jug.handle?.angleDeg, jug.spout?.angleDeg]).toEqual([0, 180]);
    expect(formOutline("bowl", { diameterMm: 150, heightMm: 70 })).toMatchObject({ handle: null, spout: null });
  });

  test("a box of 120 by 50 mm takes the circle about its corners, 130 mm, so that it may be turned any way", () => {
    expect(formOutline("box", { diameterMm: 120, widthMm: 50, heightMm: 60 }).diameterMm).toBe(130);
  });
});
