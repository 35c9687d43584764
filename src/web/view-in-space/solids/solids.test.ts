import fc from "fast-check";
import type { BufferGeometry } from "three";
import { describe, expect, test } from "vitest";
import { placedRegion, shelfRegion } from "../../../kiln/convex-region.ts";
import type { Shelf } from "../../../kiln/furniture.ts";
import { wholeWare } from "../../../loading/read-load-request.ts";
import { shelfMiddle } from "../../../loading/solids/furniture-solids.ts";
import { reachAlong } from "../../../loading/solids/plan-shape.ts";
import { widestMm } from "../../../loading/solids/upright.ts";
import { wareSolid } from "../../../loading/solids/ware-solid.ts";
import { FORM_NAMES, formOutline } from "../../../ware/forms.ts";
import type { WareFile } from "../../../ware/ware.ts";
import { outlineOf } from "./outline.ts";
import { pieceGeometry, sidesFor } from "./piece-geometry.ts";
import { rounded, sideOf } from "./side.ts";
import { slabGeometry } from "./slab-geometry.ts";

const cup: WareFile = { name: "cup", form: "beaker", count: 1, diameterMm: 80, heightMm: 100 };
const mug: WareFile = { ...cup, form: "mug", handle: { reachMm: 34, widthMm: 18, angleDeg: 90 } };
const bowl: WareFile = {
  ...cup,
  form: "bowl",
  diameterMm: 128,
  heightMm: 66,
  profile: [
    [0, 28],
    [6, 30],
    [22, 47],
    [45, 60],
    [66, 64],
  ],
};

const geometryOf = (ware: WareFile): BufferGeometry => pieceGeometry(wholeWare(ware));
const boxOf = (geometry: BufferGeometry) => {
  geometry.computeBoundingBox();
  const { min, max } = geometry.boundingBox!;
  return { min, max };
};

/** What a closed mesh encloses, by the divergence theorem; below zero where its faces look inward. */
function volumeOf(geometry: BufferGeometry): number {
  const places = geometry.getAttribute("position");
  const order = geometry.getIndex();
  const count = order?.count ?? places.count;
  const at = (i: number): [number, number, number] => {
    const k = order ? order.getX(i) : i;
    return [places.getX(k), places.getY(k), places.getZ(k)];
  };
  let sum = 0;
  for (let i = 0; i < count; i += 3) {
    const [a, b, c] = [at(i), at(i + 1), at(i + 2)];
    sum += a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return sum / 6;
}

/** What a polygon with so many sides covers of the circle through its corners: sin(2π/n) / (2π/n). */
const polygonShare = (sides: number): number => Math.sin((2 * Math.PI) / sides) / ((2 * Math.PI) / sides);

describe("a piece as a mesh", () => {
  test("a circle is drawn round to a third of a millimetre, with no more sides than that takes", () => {
    for (const radius of [5, 20, 43, 116]) {
      const sides = sidesFor(radius);
      expect(radius * (1 - Math.cos(Math.PI / sides))).toBeLessThanOrEqual(0.36);
      expect(sides % 4).toBe(0);
    }
    expect(sidesFor(40)).toBeLessThan(30);
    expect(sidesFor(1000)).toBe(48);
  });

  test("a plain cylinder encloses the cylinder's volume, its faces outward", () => {
    const { form: _, ...plain } = cup;
    const volume = volumeOf(geometryOf(plain));
    const exact = Math.PI * 40 ** 2 * 100;
    expect(volume).toBeLessThanOrEqual(exact);
    expect(volume / exact).toBeCloseTo(polygonShare(sidesFor(40)), 5);
  });

  test("an open pot is hollow: a wall and a bottom 4 mm thick", () => {
    const volume = volumeOf(geometryOf(cup));
    const [outside, inside] = [polygonShare(sidesFor(40)), polygonShare(sidesFor(36))];
    expect(volume).toBeCloseTo(Math.PI * (40 ** 2 * 100 * outside - 36 ** 2 * 96 * inside), 0);
  });

  test("stands on height 0, is as tall as the rules take it, and lifted by its cookie", () => {
    const cookie = { diameterMm: 96, thicknessMm: 6 };
    for (const ware of [cup, mug, bowl, { ...bowl, cookie }]) {
      const { min, max } = boxOf(geometryOf(ware));
      const solid = wareSolid(wholeWare(ware), 0, 0, 0, 0);
      expect(min.y).toBeCloseTo(0, 6);
      expect(max.y).toBeCloseTo(solid.topMm, 6);
    }
    expect(boxOf(geometryOf({ ...cup, cookie })).max.x).toBeCloseTo(48, 6);
  });

  test("its handle points where it was said to, and reaches exactly so far", () => {
    // The kiln's +y, away from the potter, is the renderer's −z.
    const { min, max } = boxOf(geometryOf(mug));
    expect(min.z).toBeCloseTo(-(40 + 34), 3);
    expect(max.z).toBeCloseTo(40, 3);
    expect(max.x).toBeCloseTo(40, 3);
  });

  test("every form at every size stays within the solid that the rules measure, and fills its width and height", () => {
    const size = fc.record({
      diameterMm: fc.integer({ min: 30, max: 400 }),
      heightMm: fc.integer({ min: 8, max: 450 }),
    });
    const held = fc.property(fc.constantFrom(...FORM_NAMES), size, fc.double({ min: 0, max: 360, noNaN: true }), draw);
    function draw(form: (typeof FORM_NAMES)[number], measured: { diameterMm: number; heightMm: number }, turn: number) {
      const outline = formOutline(form, measured);
      const handle = outline.handle && { ...outline.handle, angleDeg: turn };
      const ware = wholeWare({ name: "it", count: 1, form, ...outline, handle });
      const solid = wareSolid(ware, 0, 0, 0, 0);
      const geometry = pieceGeometry(ware);
      const { min, max } = boxOf(geometry);
      const reach = (nx: number, ny: number): number =>
        Math.max(...solid.parts.map((part) => reachAlong(part.core, nx, ny) + widestMm(part)));
      const slack = 0.02;
      expect(max.x).toBeLessThanOrEqual(reach(1, 0) + slack);
      expect(-min.x).toBeLessThanOrEqual(reach(-1, 0) + slack);
      expect(-min.z).toBeLessThanOrEqual(reach(0, 1) + slack);
      expect(max.z).toBeLessThanOrEqual(reach(0, -1) + slack);
      expect(min.y).toBeGreaterThanOrEqual(-slack);
      expect(max.y).toBeCloseTo(solid.topMm, 2);
      expect(max.x).toBeGreaterThanOrEqual(ware.diameterMm / 2 - slack);
      expect([...geometry.getAttribute("position").array].every(Number.isFinite)).toBe(true);
    }
    fc.assert(held, { seed: 11, numRuns: 150 });
  });

  test("sixty of them are few enough triangles to turn smoothly", () => {
    expect(geometryOf(mug).getIndex()!.count / 3).toBeLessThan(700);
    expect(geometryOf(bowl).getIndex()!.count / 3).toBeLessThan(2000);
  });

  test("a rounded side passes through every point of the profile and swells beyond none", () => {
    const side = sideOf(wholeWare(bowl));
    const smooth = rounded(side);
    for (const point of side) expect(smooth).toContainEqual([...point]);
    for (let i = 1; i < smooth.length; i += 1) {
      expect(smooth[i]![0]).toBeGreaterThanOrEqual(smooth[i - 1]![0]);
      expect(smooth[i]![1]).toBeLessThanOrEqual(64);
    }
  });
});

describe("a slab as a mesh", () => {
  const common = { name: "s", thicknessMm: 16, count: 1 };
  const shelves: Shelf[] = [
    { shape: "disc", diameterMm: 390, ...common },
    { shape: "half-disc", diameterMm: 390, ...common },
    { shape: "polygon", sides: 8, acrossFlatsMm: 380, ...common },
    { shape: "rectangle", widthMm: 300, lengthMm: 450, ...common },
  ];

  test.each(shelves)(
    "a $shape encloses its area times its thickness, wherever it lies and however it is turned",
    (shelf) => {
      const region = placedRegion(shelfRegion(shelf), 31, -12, 37);
      const volume = volumeOf(slabGeometry(outlineOf(region), 100, 116));
      const exact = shelfMiddle(shelf).areaMm2 * 16;
      expect(volume).toBeLessThanOrEqual(exact * (1 + 1e-6));
      // 72 flat sides take 0.13 % off a circle.
      expect(volume / exact).toBeGreaterThan(0.998);
    },
  );

  test("walls alone have neither floor nor top", () => {
    const square = outlineOf(shelfRegion(shelves[3]!));
    expect(slabGeometry(square, 0, 10, "walls").getAttribute("position").count).toBe(4 * 6);
    expect(slabGeometry(square, 0, 10).getAttribute("position").count).toBe(4 * 6 + 2 * 2 * 3);
  });
});
