import type { ConvexRegion } from "../../src/kiln/convex-region.ts";
import { Crowding } from "../../src/loading/packing/crowding.ts";
import { Hopping } from "../../src/loading/packing/hopping.ts";
import type { PieceKind } from "../../src/loading/packing/piece-kind.ts";
import { SPARE_MM } from "../../src/loading/packing/piece-table.ts";
import { Separation } from "../../src/loading/packing/separation.ts";
import { type Chance, seededChance } from "../../src/measures/seeded-chance.ts";

// Each next arrangement has to beat the best by this share.
const TIGHTER = 5e-4;
/** The containers the records are for, each so far from its middle to its edge: wide enough that what the kernel
 * takes for touching is less than a twenty-thousandth of a disc. */
const SIZE_MM = 400;
// Hops without a better hollow before another start: found by trying 100, 300 and 1000 on the table of records.
const PATIENCE = 250;
export const CONTAINERS = {
  circle: { circle: { x: 0, y: 0, radius: SIZE_MM }, sides: [] },
  square: {
    circle: null,
    sides: [
      { nx: 1, ny: 0, offset: SIZE_MM },
      { nx: 0, ny: 1, offset: SIZE_MM },
      { nx: -1, ny: 0, offset: SIZE_MM },
      { nx: 0, ny: -1, offset: SIZE_MM },
    ],
  },
} as const satisfies Record<string, ConvexRegion>;

export interface Packed {
  /** Radius of the circle, or half the side of the square, in the units of the radii asked about. */
  readonly size: number;
  /** x and y of each disc, in the same units, middle of the container at 0. */
  readonly centres: readonly (readonly [number, number])[];
}

/**
 * Looks for the smallest circle or square that holds discs of the given radii, with the kernel that packs shelves: the
 * container stays and the discs grow until they no longer part.
 *
 * @param mayGoOn asked often; false ends the search. Told the best size so far.
 */
export function smallestContainer(
  radii: readonly number[],
  container: keyof typeof CONTAINERS,
  seed: number,
  mayGoOn: (best: number) => boolean,
): Packed {
  const region = CONTAINERS[container];
  const widths = [...new Set(radii)].sort((a, b) => b - a);
  // Discs of about half the container's area to begin with.
  const area = radii.reduce((sum, radius) => sum + radius * radius, 0);
  const unit = SIZE_MM * Math.sqrt(0.5 / area);
  const crowding = new Crowding(
    { bounds: [{ region, marginMm: 0 }], standoffs: [], gapMm: 0 },
    widths.map((radius) => disc(radius * unit)),
    radii.length,
  );
  const separation = new Separation(crowding);
  const hopping = new Hopping(separation);
  const chance = seededChance(seed);
  const count = radii.length;
  const kindOf = Int32Array.from(
    [...radii].sort((a, b) => b - a),
    (radius) => widths.indexOf(radius),
  );
  const places = new Float64Array(3 * count);
  const best = new Float64Array(3 * count);
  let bestScale = 0;
  const sizeNow = (): number => (bestScale > 0 ? SIZE_MM / (bestScale * unit) : Number.POSITIVE_INFINITY);
  const goOn = (): boolean => mayGoOn(sizeNow());

  /** Grows the discs as far as this arrangement bears. */
  const grow = (): void => {
    let step = 2e-3;
    const trial = places.slice();
    while (step > 2e-6 && goOn()) {
      crowding.scalePieces(bestScale * (1 + step));
      trial.set(places);
      separation.descend(kindOf, count, trial, 400);
      const least = exactScale(trial, kindOf, widths, unit, region);
      if (least < bestScale * (1 + 0.2 * step)) step /= 2;
      if (least <= bestScale) continue;
      bestScale = least;
      places.set(trial);
      best.set(trial);
    }
  };

  let density = 0.62;
  while (goOn()) {
    const target = bestScale > 0 ? bestScale * (1 + TIGHTER) : Math.sqrt(density / 0.5);
    crowding.scalePieces(target);
    if (bestScale > 0 && chance.next() < 0.35) places.set(best);
    else scatter(separation, kindOf, count, places, chance);
    const found = hopping.hop(kindOf, count, places, PATIENCE, SIZE_MM, chance, goOn);
    if (!found) {
      if (bestScale === 0) density *= 0.98;
      continue;
    }
    bestScale = exactScale(places, kindOf, widths, unit, region);
    best.set(places);
    grow();
  }
  const shrink = 1 / (bestScale * unit);
  return {
    size: sizeNow(),
    centres: Array.from({ length: count }, (_, i) => [
      (best[3 * i] as number) * shrink,
      (best[3 * i + 1] as number) * shrink,
    ]),
  };
}

function scatter(
  separation: Separation,
  kindOf: Int32Array,
  count: number,
  places: Float64Array,
  chance: Chance,
): void {
  for (let i = 0; i < count; i++) separation.settle(kindOf, i + 1, places, i, 6, chance, SIZE_MM);
}

/** By how much the discs may be scaled and truly neither overlap nor pass the edge where these places put them. */
function exactScale(
  places: Float64Array,
  kindOf: Int32Array,
  widths: readonly number[],
  unit: number,
  region: ConvexRegion,
): number {
  let scale = Number.POSITIVE_INFINITY;
  for (let i = 0; i < kindOf.length; i++) {
    const x = places[3 * i] as number;
    const y = places[3 * i + 1] as number;
    const radius = (widths[kindOf[i] as number] as number) * unit;
    if (region.circle) scale = Math.min(scale, (region.circle.radius - Math.hypot(x, y)) / radius);
    for (const side of region.sides) scale = Math.min(scale, (side.offset - side.nx * x - side.ny * y) / radius);
    for (let j = i + 1; j < kindOf.length; j++) {
      const apart = Math.hypot(x - (places[3 * j] as number), y - (places[3 * j + 1] as number));
      scale = Math.min(scale, apart / (radius + (widths[kindOf[j] as number] as number) * unit));
    }
  }
  return scale;
}

/** A disc as a kind of piece. The kernel's own spare is taken off again: the result is measured exactly instead. */
const disc = (radius: number): PieceKind => ({
  radius: radius - SPARE_MM,
  arms: [],
  heightMm: 1,
  massKg: 1,
  areaMm2: Math.PI * radius * radius,
  swingMm: 0,
});
