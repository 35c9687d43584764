import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distanceBetween } from "../testing/gjk-distance.ts";
import { anyForm, anyStand, convexAt, type Form, type Stand, solidAt } from "../testing/random-solids.ts";
import { nearestSamplesMm, sampledSurface } from "../testing/sampled-surface.ts";
import { solidDistanceMm } from "./upright.ts";

const LAST_DIGITS_MM = 1e-8;
const GENERAL_METHOD_MM = 1e-4;

const pair = fc.tuple(anyForm, anyStand, anyForm, anyStand);
const distance = (a: Form, at: Stand, b: Form, bt: Stand): number => solidDistanceMm(solidAt(a, at), solidAt(b, bt));

describe("the distance between two solids", () => {
  test("is the same from either side", () => {
    fc.assert(
      fc.property(pair, ([a, at, b, bt]) => {
        expect(Math.abs(distance(a, at, b, bt) - distance(b, bt, a, at))).toBeLessThan(LAST_DIGITS_MM);
      }),
      { numRuns: 1000 },
    );
  });

  test("does not change when both are turned about the axis and moved", () => {
    fc.assert(
      fc.property(pair, anyStand, ([a, at, b, bt], by) => {
        const moved = (stand: Stand): Stand => {
          const turn = (by.turnDeg * Math.PI) / 180;
          return {
            x: by.x + stand.x * Math.cos(turn) - stand.y * Math.sin(turn),
            y: by.y + stand.x * Math.sin(turn) + stand.y * Math.cos(turn),
            z: stand.z + by.z,
            turnDeg: stand.turnDeg + by.turnDeg,
          };
        };
        expect(Math.abs(distance(a, at, b, bt) - distance(a, moved(at), b, moved(bt)))).toBeLessThan(1e-7);
      }),
      { numRuns: 1000 },
    );
  });

  test("agrees with points strewn over both surfaces, as near as they are strewn", () => {
    fc.assert(
      fc.property(pair, ([a, at, b, bt]) => {
        const exact = distance(a, at, b, bt);
        fc.pre(exact > 0);
        const [from, to] = [sampledSurface(a, at), sampledSurface(b, bt)];
        const sampled = nearestSamplesMm(from, to);
        expect(sampled).toBeGreaterThan(exact - LAST_DIGITS_MM);
        expect(sampled).toBeLessThan(exact + from.withinMm + to.withinMm);
      }),
      { numRuns: 150 },
    );
  });

  test("agrees with the general method of Gilbert, Johnson and Keerthi on convex parts built apart", () => {
    let worst = 0;
    fc.assert(
      fc.property(pair, ([a, at, b, bt]) => {
        const exact = distance(a, at, b, bt);
        let general = Number.POSITIVE_INFINITY;
        for (const part of convexAt(a, at)) {
          for (const other of convexAt(b, bt)) general = Math.min(general, distanceBetween(part, other));
        }
        const off = Math.abs(Math.max(0, exact) - general);
        worst = Math.max(worst, off);
        expect(off).toBeLessThan(GENERAL_METHOD_MM);
      }),
      { numRuns: 2000 },
    );
    console.log(`solids: worst difference from the general method ${worst.toExponential(1)} mm over 2000 pairs`);
  });

  test("below zero, is how far they must be moved apart: sideways, or up where that is less", () => {
    const cylinder = (x: number, z: number, radius: number, height: number) =>
      solidAt(
        {
          kind: "body",
          rings: [
            [0, radius],
            [height, radius],
          ],
        },
        { x, y: 0, z, turnDeg: 0 },
      );
    expect(solidDistanceMm(cylinder(0, 0, 30, 50), cylinder(55, 0, 30, 50))).toBeCloseTo(-5, 9);
    expect(solidDistanceMm(cylinder(0, 0, 30, 50), cylinder(10, 48, 30, 50))).toBeCloseTo(-2, 9);
    expect(solidDistanceMm(cylinder(0, 0, 30, 50), cylinder(60, 0, 30, 50))).toBeCloseTo(0, 9);
  });

  test("beyond the distance asked for, is never told as less than that", () => {
    fc.assert(
      fc.property(pair, fc.double({ min: 0, max: 100, noNaN: true }), ([a, at, b, bt], withinMm) => {
        const exact = distance(a, at, b, bt);
        const told = solidDistanceMm(solidAt(a, at), solidAt(b, bt), withinMm);
        if (exact <= withinMm) expect(told).toBe(exact);
        else expect(told).toBeGreaterThan(withinMm);
        expect(told).toBeLessThanOrEqual(exact + LAST_DIGITS_MM);
      }),
      { numRuns: 1000 },
    );
  });
});
