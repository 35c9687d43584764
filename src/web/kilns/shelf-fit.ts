import type { Chamber } from "../../kiln/chamber.ts";
import { type ConvexRegion, chamberRegion, placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { marginInsideMm } from "../../loading/solids/plan-distance.ts";
import { type PlanShape, pointShape, regionShape } from "../../loading/solids/plan-shape.ts";

/** How a shelf lies in a chamber at its best. Millimetres and degrees. */
export interface ShelfFit {
  readonly turnDeg: number;
  readonly xMm: number;
  readonly yMm: number;
  /** From its edge to the nearest wall; below zero, by how much it passes the wall whatever one does. */
  readonly wallMm: number;
  /** A half shelf that lies so together with its other half. */
  readonly paired: boolean;
}

/**
 * Where a shelf lies with the most air to the wall. Whole shelves lie on the axis; two halves of a disc lie together as
 * the whole, and one alone off the axis only where the whole does not go in.
 */
export function shelfFit(chamber: Chamber, shelf: Shelf): ShelfFit {
  const paired = shelf.shape === "half-disc";
  const onAxis = best(turnsOf(chamber, shelf).map((turnDeg) => fitAt(chamber, shelf, 0, 0, turnDeg, paired)));
  if (isSymmetric(shelf) && isEven(chamber)) return onAxis;
  if (paired && onAxis.wallMm >= 0) return onAxis;
  const alone = best(turnsOf(chamber, shelf).map((turnDeg) => offAxis(chamber, shelf, turnDeg)));
  return alone.wallMm > onAxis.wallMm + 0.05 ? alone : onAxis;
}

const best = (fits: readonly ShelfFit[]): ShelfFit => fits.reduce((a, b) => (b.wallMm > a.wallMm + 1e-9 ? b : a));

function fitAt(chamber: Chamber, shelf: Shelf, xMm: number, yMm: number, turnDeg: number, paired: boolean): ShelfFit {
  const { shape, radiusMm } = outline(placedRegion(shelfRegion(shelf), 0, 0, turnDeg));
  return { xMm, yMm, turnDeg, paired, wallMm: marginAt(shape, radiusMm, chamberRegion(chamber), xMm, yMm) };
}

// The shelf at (x, y) in the chamber is the shelf at the middle of a chamber moved the other way.
const marginAt = (shape: PlanShape, radiusMm: number, chamber: ConvexRegion, x: number, y: number): number =>
  marginInsideMm(shape, radiusMm, placedRegion(chamber, -x, -y, 0));

function outline(region: ConvexRegion): { shape: PlanShape; radiusMm: number } {
  const { circle } = region;
  if (circle && region.sides.length === 0) return { shape: pointShape(circle.x, circle.y), radiusMm: circle.radius };
  return { shape: regionShape(region), radiusMm: 0 };
}

/** The air to the wall is a concave function of where the shelf lies, so the best place is found by narrowing down. */
function offAxis(chamber: Chamber, shelf: Shelf, turnDeg: number): ShelfFit {
  const region = chamberRegion(chamber);
  const { shape, radiusMm } = outline(placedRegion(shelfRegion(shelf), 0, 0, turnDeg));
  const reach = shelf.shape === "half-disc" ? shelf.diameterMm / 2 : 100;
  const across = (x: number) => narrowDown((y) => marginAt(shape, radiusMm, region, x, y), reach);
  const { at: xMm } = narrowDown((x) => across(x).value, reach);
  const { at: yMm, value: wallMm } = across(xMm);
  return { xMm, yMm, turnDeg, wallMm, paired: false };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const NARROWED_MM = 0.02;

/** The highest place of a concave function between −reach and reach, by golden section. */
function narrowDown(height: (at: number) => number, reach: number): { at: number; value: number } {
  let [low, high] = [-reach, reach];
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let [leftHeight, rightHeight] = [height(left), height(right)];
  while (high - low > NARROWED_MM) {
    if (leftHeight >= rightHeight) {
      [high, right, rightHeight] = [right, left, leftHeight];
      left = high - GOLDEN * (high - low);
      leftHeight = height(left);
    } else {
      [low, left, leftHeight] = [left, right, rightHeight];
      right = low + GOLDEN * (high - low);
      rightHeight = height(right);
    }
  }
  const at = (low + high) / 2;
  return { at, value: height(at) };
}

const isSymmetric = (shelf: Shelf): boolean =>
  shelf.shape !== "half-disc" && (shelf.shape !== "polygon" || shelf.sides % 2 === 0);
const isEven = (chamber: Chamber): boolean => chamber.shape !== "polygon" || chamber.sides % 2 === 0;

/** Turns worth trying: a whole period of chamber and shelf together, by a degree or so for whole shelves. */
function turnsOf(chamber: Chamber, shelf: Shelf): number[] {
  if (shelf.shape === "disc" || (chamber.shape === "round" && isSymmetric(shelf))) return [0];
  const chamberPeriod = chamber.shape === "round" ? 15 : chamber.shape === "polygon" ? 360 / chamber.sides : 180;
  if (shelf.shape === "half-disc") return steps(chamber.shape === "rectangle" ? 360 : chamberPeriod, 12);
  const shelfPeriod = shelf.shape === "polygon" ? 360 / shelf.sides : 180;
  // Flats along flats or against corners first; between them by a degree.
  return [0, chamberPeriod / 2, shelfPeriod / 2, ...steps(shelfPeriod, Math.ceil(shelfPeriod))];
}

const steps = (period: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => (period * i) / count);
