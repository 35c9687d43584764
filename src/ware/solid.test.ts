import { describe, expect, test } from "vitest";
import { pieceMassKg } from "./mass.ts";
import { pieceSolid } from "./solid.ts";
import type { Ware } from "./ware.ts";

const beaker: Ware = {
  name: "beaker",
  count: 1,
  diameterMm: 70,
  heightMm: 65,
  handle: null,
  spout: null,
  profile: null,
  cookie: null,
  value: 1,
  mustFire: false,
  form: null,
  glaze: null,
  cone: null,
  massKg: null,
};

describe("the solid a piece fills", () => {
  test("is a plain cylinder without a profile", () => {
    const solid = pieceSolid(beaker);
    expect(solid).toEqual({
      heightMm: 65,
      rings: [
        [0, 35],
        [65, 35],
      ],
      cookie: null,
      stadiums: [],
    });
  });

  test("is lifted by its cookie, handle and spout and all", () => {
    const solid = pieceSolid({
      ...beaker,
      profile: [
        [0, 28],
        [65, 35],
      ],
      cookie: { diameterMm: 60, thicknessMm: 6 },
      handle: { reachMm: 26, widthMm: 16, angleDeg: 0 },
      spout: { reachMm: 10, widthMm: 20, angleDeg: 180 },
    });
    expect(solid.heightMm).toBe(71);
    expect(solid.rings).toEqual([
      [6, 28],
      [71, 35],
    ]);
    expect(solid.cookie).toEqual({ radiusMm: 30, topMm: 6 });
    expect(solid.stadiums).toEqual([
      { angle: 0, lengthMm: 53, radiusMm: 8, bottomMm: 6, topMm: 71 },
      { angle: Math.PI, lengthMm: 35, radiusMm: 10, bottomMm: 6, topMm: 71 },
    ]);
  });

  test("has its handle's far end as far past the rim as it reaches", () => {
    const [handle] = pieceSolid({ ...beaker, handle: { reachMm: 26, widthMm: 16, angleDeg: 30 } }).stadiums;
    expect(handle!.lengthMm + handle!.radiusMm).toBe(35 + 26);
    expect(handle!.angle).toBeCloseTo(Math.PI / 6, 12);
  });
});

describe("a piece's mass", () => {
  test("is what she weighed, where she weighed it", () => {
    expect(pieceMassKg({ ...beaker, massKg: 0.31 })).toBe(0.31);
  });

  test("is else a 6 mm wall of fired clay over side and foot (common practice, no source; worked by hand)", () => {
    // Foot π · 35² · 6 = 23,091 mm³; side 2π · 32 · 6 · 59 = 71,176 mm³; 2200 kg/m³: 0.2074 kg.
    expect(pieceMassKg(beaker)).toBeCloseTo(0.2074, 4);
  });

  test("of something thinner than a wall is that of a solid slab", () => {
    const tile = { ...beaker, diameterMm: 100, heightMm: 5 };
    expect(pieceMassKg(tile)).toBeCloseTo(Math.PI * 50 ** 2 * 5 * 2.2e-6, 9);
  });
});
