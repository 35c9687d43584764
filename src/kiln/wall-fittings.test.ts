import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Chamber } from "./chamber.ts";
import { probeLine, spyholeMouth } from "./wall-fittings.ts";

const octagon: Chamber = { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 };
const round: Chamber = { shape: "round", diameterMm: 400, depthMm: 460 };
const rectangle: Chamber = { shape: "rectangle", widthMm: 300, lengthMm: 500, depthMm: 460 };
const probe = (angleDeg: number, reachMm = 25) => ({ name: "probe", angleDeg, heightMm: 200, reachMm });
const hole = (angleDeg: number) => ({ name: "hole", angleDeg, heightMm: 150, diameterMm: 20, open: true });

describe("a probe", () => {
  test("runs level from the wall at its angle straight toward the axis", () => {
    const line = probeLine(octagon, probe(0));
    expect(line).toEqual({ wallX: 215, wallY: 0, tipX: 190, tipY: 0, heightMm: 200 });
    const slant = probeLine(octagon, probe(22.5, 50));
    expect(Math.hypot(slant.wallX, slant.wallY)).toBeCloseTo(215 / Math.cos(Math.PI / 8), 9);
    expect(Math.hypot(slant.wallX - slant.tipX, slant.wallY - slant.tipY)).toBeCloseTo(50, 9);
  });

  test("is as long as it reaches and points at the axis, in every chamber at every angle", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(octagon, round, rectangle),
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 1, max: 140, noNaN: true }),
        (chamber, angleDeg, reachMm) => {
          const line = probeLine(chamber, probe(angleDeg, reachMm));
          expect(Math.hypot(line.wallX - line.tipX, line.wallY - line.tipY)).toBeCloseTo(reachMm, 9);
          expect(line.wallX * line.tipY - line.wallY * line.tipX).toBeCloseTo(0, 6);
        },
      ),
    );
  });
});

describe("a spyhole's mouth", () => {
  test("lies in the flat wall it is cut in, though its angle is not that wall's", () => {
    const mouth = spyholeMouth(octagon, hole(15));
    expect([mouth.nx, mouth.ny]).toEqual([1, 0]);
    expect(mouth.x).toBeCloseTo(215, 9);
    expect(mouth.y).toBeCloseTo(215 * Math.tan(Math.PI / 12), 9);
    expect(mouth).toMatchObject({ heightMm: 150, radiusMm: 10 });
    const end = spyholeMouth(rectangle, hole(80));
    expect(end.nx).toBeCloseTo(0, 12);
    expect(end.ny).toBe(1);
    expect(end.y).toBeCloseTo(250, 9);
  });

  test("faces the axis in a round chamber", () => {
    const mouth = spyholeMouth(round, hole(120));
    expect([mouth.x, mouth.y]).toEqual([200 * mouth.nx, 200 * mouth.ny]);
    expect(mouth.nx).toBeCloseTo(-0.5, 12);
  });
});
