import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ConvexRegion,
  chamberRegion,
  edgeDistanceMm,
  placedRegion,
  regionCorners,
  shelfRegion,
} from "./convex-region.ts";

const holds = (region: ConvexRegion, x: number, y: number, slack = 0): boolean =>
  region.sides.every((side) => side.nx * x + side.ny * y <= side.offset + slack) &&
  (region.circle === null || Math.hypot(x - region.circle.x, y - region.circle.y) <= region.circle.radius + slack);
const at = (deg: number): [number, number] => [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
const shelf = { name: "shelf", thicknessMm: 16, count: 1 };
const regions: Record<string, ConvexRegion> = {
  octagon: chamberRegion({ shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 }),
  triangle: chamberRegion({ shape: "polygon", sides: 3, acrossFlatsMm: 200, depthMm: 460 }),
  round: chamberRegion({ shape: "round", diameterMm: 400, depthMm: 460 }),
  rectangle: chamberRegion({ shape: "rectangle", widthMm: 300, lengthMm: 500, depthMm: 460 }),
  disc: shelfRegion({ shape: "disc", diameterMm: 390, ...shelf }),
  "half disc": shelfRegion({ shape: "half-disc", diameterMm: 390, ...shelf }),
  hexagon: shelfRegion({ shape: "polygon", sides: 6, acrossFlatsMm: 380, ...shelf }),
};

describe("chambers and shelves seen from above", () => {
  test("an octagon has a flat's middle at angle 0 and a corner half a side on", () => {
    expect(edgeDistanceMm(regions.octagon!, 0)).toBeCloseTo(215, 9);
    expect(edgeDistanceMm(regions.octagon!, 22.5)).toBeCloseTo(215 / Math.cos(Math.PI / 8), 9);
    expect(edgeDistanceMm(regions.octagon!, 45)).toBeCloseTo(215, 9);
  });

  test("a rectangle is as wide along x and as long along y as it says", () => {
    expect([0, 90, 180, 270].map((deg) => edgeDistanceMm(regions.rectangle!, deg))).toEqual([150, 250, 150, 250]);
    expect(regionCorners(regions.rectangle!)).toEqual([
      [150, 250],
      [-150, 250],
      [-150, -250],
      [150, -250],
    ]);
  });

  test("a half disc lies on the +y side of its straight side", () => {
    expect(edgeDistanceMm(regions["half disc"]!, 90)).toBeCloseTo(195, 9);
    expect(edgeDistanceMm(regions["half disc"]!, 270)).toBeCloseTo(0, 9);
    expect(holds(regions["half disc"]!, 0, 100)).toBe(true);
    expect(holds(regions["half disc"]!, 0, -1)).toBe(false);
  });

  test("corners of a regular polygon are its sides' number, all at one distance", () => {
    const corners = regionCorners(regions.hexagon!);
    expect(corners).toHaveLength(6);
    for (const [x, y] of corners) expect(Math.hypot(x, y)).toBeCloseTo(190 / Math.cos(Math.PI / 6), 9);
  });

  test.each(Object.keys(regions))("%s: inside up to the edge distance in every direction, outside past it", (name) => {
    const region = regions[name]!;
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (deg) => {
        const edge = edgeDistanceMm(region, deg);
        const [dx, dy] = at(deg);
        expect(holds(region, dx * edge * 0.999, dy * edge * 0.999, 1e-9)).toBe(true);
        expect(holds(region, dx * (edge + 0.01), dy * (edge + 0.01), -1e-6)).toBe(false);
      }),
    );
  });

  test.each(Object.keys(regions))("%s: turned and moved, holds the points it held", (name) => {
    const place = fc.double({ min: -300, max: 300, noNaN: true });
    fc.assert(
      fc.property(place, place, place, place, place, (x, y, moveX, moveY, turnDeg) => {
        const [cos, sin] = at(turnDeg);
        const placed = placedRegion(regions[name]!, moveX, moveY, turnDeg);
        const [movedX, movedY] = [moveX + x * cos - y * sin, moveY + x * sin + y * cos];
        if (holds(regions[name]!, x, y, -1e-6)) expect(holds(placed, movedX, movedY)).toBe(true);
        if (!holds(regions[name]!, x, y, 1e-6)) expect(holds(placed, movedX, movedY)).toBe(false);
      }),
    );
  });
});
