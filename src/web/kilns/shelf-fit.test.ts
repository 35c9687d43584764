import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Chamber } from "../../kiln/chamber.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { READY_MADE_KILNS } from "../../kiln/ready-made-kilns.ts";
import { shelfFit } from "./shelf-fit.ts";

const octagon: Chamber = { shape: "polygon", sides: 8, acrossFlatsMm: 430, depthMm: 460 };
const round: Chamber = { shape: "round", diameterMm: 400, depthMm: 460 };
const box: Chamber = { shape: "rectangle", widthMm: 300, lengthMm: 500, depthMm: 460 };
const of = { name: "shelf", thicknessMm: 15, count: 1 };
const disc = (diameterMm: number): Shelf => ({ ...of, shape: "disc", diameterMm });
const half = (diameterMm: number): Shelf => ({ ...of, shape: "half-disc", diameterMm });
const slab = (widthMm: number, lengthMm: number): Shelf => ({ ...of, shape: "rectangle", widthMm, lengthMm });
const polygon = (sides: number, acrossFlatsMm: number): Shelf => ({ ...of, shape: "polygon", sides, acrossFlatsMm });

describe("a shelf in a chamber", () => {
  test.each<[string, Chamber, Shelf, number]>([
    ["a disc in eight sides", octagon, disc(390), 20],
    ["a disc wider than its drum", round, disc(412), -6],
    ["eight sides in eight", octagon, polygon(8, 410), 10],
    ["a slab the long way", box, slab(280, 480), 10],
    ["a slab that goes in only turned", box, slab(480, 280), 10],
    // Its corners reach half its diagonal of 300√2.
    ["a square in a drum", round, slab(250, 250), 200 - 125 * Math.SQRT2],
    ["a pair of halves", octagon, half(400), 15],
  ])("%s", (_, chamber, shelf, wallMm) => expect(shelfFit(chamber, shelf).wallMm).toBeCloseTo(wallMm, 1));

  test("halves that do not go in as a pair go in one at a time where there is room", () => {
    const fit = shelfFit(box, half(310));
    expect(fit.paired).toBe(false);
    expect(fit.wallMm).toBeGreaterThan(20);
    expect(shelfFit(box, half(300)).paired).toBe(true);
    expect(shelfFit(round, half(440)).wallMm).toBeLessThan(0);
  });

  test("a half disc gains nothing off the axis of a drum", () => {
    // The least circle about a half disc is its own whole circle, so it gains nothing off the axis of a drum.
    expect(shelfFit(round, half(410)).wallMm).toBeCloseTo(-5, 1);
  });

  test("a triangle lies off the axis of a square chamber, with as much air as can be had", () => {
    const triangle = polygon(3, 100);
    const square: Chamber = { shape: "rectangle", widthMm: 300, lengthMm: 300, depthMm: 300 };
    const fit = shelfFit(square, triangle);
    // Its side is 100√3; the smallest square about such a triangle, turned 15°, has side·cos 15° (from memory).
    expect(fit.wallMm).toBeGreaterThanOrEqual((300 - 100 * Math.sqrt(3) * Math.cos(Math.PI / 12)) / 2 - 0.6);
    expect(fit.wallMm).toBeLessThanOrEqual((300 - 100 * Math.sqrt(3) * Math.cos(Math.PI / 12)) / 2 + 1e-6);
  });

  test("of twice the size has twice the air, in every chamber", () => {
    const every = fc.property(
      fc.constantFrom<Shelf>(disc(300), slab(200, 320), polygon(6, 280), half(390)),
      fc.constantFrom<Chamber>(octagon, round, box),
      (shelf, chamber) => {
        const twice = { ...shelf } as Record<string, unknown>;
        for (const [name, value] of Object.entries(twice)) {
          if (name.endsWith("Mm")) twice[name] = 2 * (value as number);
        }
        const wide = { ...chamber } as Record<string, unknown>;
        for (const [name, value] of Object.entries(wide)) if (name.endsWith("Mm")) wide[name] = 2 * (value as number);
        const once = shelfFit(chamber, shelf).wallMm;
        expect(shelfFit(wide as Chamber, twice as Shelf).wallMm).toBeCloseTo(2 * once, 0);
      },
    );
    fc.assert(every, { numRuns: 12 });
  });

  test.each(READY_MADE_KILNS)("every shelf of the ready-made kiln $id keeps off the wall", ({ kiln, furniture }) => {
    for (const shelf of furniture.shelves) expect(shelfFit(kiln.chamber, shelf).wallMm).toBeGreaterThanOrEqual(6);
  });
});
