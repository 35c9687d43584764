import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { anyForm, anyStand, type Form, type Stand, solidAt } from "../testing/random-solids.ts";
import { sampledSurface } from "../testing/sampled-surface.ts";
import { marginInsideMm, planDistanceMm } from "./plan-distance.ts";
import { farthestMm, lineShape, pointShape, regionShape } from "./plan-shape.ts";
import { widestMm } from "./upright.ts";

const LAST_DIGITS_MM = 1e-9;
const anyRegion = fc
  .constantFrom<"disc" | "half-disc" | "polygon">("disc", "half-disc", "polygon")
  .map((shape): Shelf => {
    const shared = { name: "shelf", thicknessMm: 10, count: 1 };
    return shape === "polygon"
      ? { shape, sides: 8, acrossFlatsMm: 430, ...shared }
      : { shape, diameterMm: 500, ...shared };
  });
const coreOf = (form: Form, stand: Stand) => solidAt(form, stand).parts[0]!.core;

describe("the distance between two shapes seen from above", () => {
  test("changes by no more than the way one of them is moved, overlapping or not", () => {
    fc.assert(
      fc.property(anyForm, anyStand, anyForm, anyStand, anyStand, (a, at, b, bt, by) => {
        const [dx, dy] = [by.x / 10, by.y / 10];
        const before = planDistanceMm(coreOf(a, at), coreOf(b, bt));
        const after = planDistanceMm(coreOf(a, at), coreOf(b, { ...bt, x: bt.x + dx, y: bt.y + dy }));
        expect(Math.abs(after - before)).toBeLessThanOrEqual(Math.hypot(dx, dy) + LAST_DIGITS_MM);
      }),
      { numRuns: 1000 },
    );
  });

  test("of crossing lines is how far one must move to lie beside the other", () => {
    expect(planDistanceMm(lineShape(-10, 0, 10, 0), lineShape(0, -3, 0, 50))).toBeCloseTo(-3, 12);
    expect(planDistanceMm(lineShape(-10, 0, 10, 0), lineShape(0, 4, 0, 50))).toBeCloseTo(4, 12);
    expect(planDistanceMm(lineShape(0, 0, 0, 0), lineShape(3, 4, 3, 4))).toBeCloseTo(5, 12);
  });

  test("reaches a half disc's arc, corner and straight side", () => {
    const shelf = { shape: "half-disc", diameterMm: 200, name: "half", thicknessMm: 10, count: 1 } as const;
    const half = regionShape(shelfRegion(shelf));
    expect(planDistanceMm(pointShape(0, 150), half)).toBeCloseTo(50, 12);
    expect(planDistanceMm(pointShape(130, -40), half)).toBeCloseTo(50, 12);
    expect(planDistanceMm(pointShape(20, -7), half)).toBeCloseTo(7, 12);
    expect(planDistanceMm(pointShape(0, 20), half)).toBeCloseTo(-20, 12);
    expect(farthestMm(half, 0, -50)).toBeCloseTo(150, 12);
    expect(farthestMm(half, 0, 50)).toBeCloseTo(Math.hypot(100, 50), 12);
  });
});

describe("how far inside a region a solid lies", () => {
  test("is what the nearest of many points strewn over it says, as near as they are strewn", () => {
    fc.assert(
      fc.property(anyForm, anyStand, anyRegion, anyStand, (form, stand, shelf, at) => {
        const region = placedRegion(shelfRegion(shelf), at.x / 4, at.y / 4, at.turnDeg);
        const [part] = solidAt(form, stand).parts;
        const exact = marginInsideMm(part!.core, widestMm(part!), region);
        const strewn = sampledSurface(form, stand);
        const depth = (x: number, y: number): number => {
          const sides = region.sides.map((side) => side.offset - side.nx * x - side.ny * y);
          const circle = region.circle;
          return Math.min(...sides, circle ? circle.radius - Math.hypot(x - circle.x, y - circle.y) : Infinity);
        };
        const least = Math.min(...strewn.points.map(([x, y]) => depth(x, y)));
        expect(least).toBeGreaterThan(exact - LAST_DIGITS_MM);
        expect(least).toBeLessThan(exact + strewn.withinMm);
      }),
      { numRuns: 500 },
    );
  });
});
