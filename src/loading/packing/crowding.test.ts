import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededChance } from "../../measures/seeded-chance.ts";
import { closest, closestOnSegments } from "./closest.ts";
import { closestToSquare } from "./closest-to-square.ts";
import { Crowding, TOUCH_MM } from "./crowding.ts";
import type { LevelSpace } from "./level-space.ts";
import type { PieceKind } from "./piece-kind.ts";
import { QUICK, Separation } from "./separation.ts";

const place = fc.double({ min: -100, max: 100, noNaN: true });
const STEPS = 400;
/** A segment shorter than this is taken for a point. */
const AS_A_POINT_MM = 1e-6;
const along = (i: number): number => i / STEPS;

describe("distances between shapes seen from above", () => {
  it("agrees with points strewn along two segments", () => {
    fc.assert(
      fc.property(fc.tuple(place, place, place, place, place, place, place, place), (n) => {
        const [ax, ay, ux, uy, bx, by, vx, vy] = n;
        const found = Math.sqrt(closestOnSegments(ax, ay, ux, uy, bx, by, vx, vy));
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 60; i++) {
          for (let j = 0; j <= 60; j++) {
            const dx = ax + (i / 60) * ux - bx - (j / 60) * vx;
            const dy = ay + (i / 60) * uy - by - (j / 60) * vy;
            least = Math.min(least, Math.hypot(dx, dy));
          }
        }
        // Strewn points can only be further apart, by at most half a step of each segment.
        expect(found).toBeLessThanOrEqual(least + AS_A_POINT_MM);
        expect(found).toBeGreaterThanOrEqual(least - (Math.hypot(ux, uy) + Math.hypot(vx, vy)) / 120 - AS_A_POINT_MM);
      }),
      { numRuns: 150 },
    );
  });

  it("agrees with points strewn along a segment near a square, corners cut off included", () => {
    fc.assert(
      fc.property(place, place, place, place, fc.double({ min: 5, max: 40, noNaN: true }), (px, py, qx, qy, half) => {
        const found = closestToSquare(px, py, qx, qy, half);
        let least = Number.POSITIVE_INFINITY;
        let inside = false;
        for (let i = 0; i <= STEPS; i++) {
          const x = Math.abs(px + along(i) * qx) - half;
          const y = Math.abs(py + along(i) * qy) - half;
          if (x < -1e-6 && y < -1e-6) inside = true;
          least = Math.min(least, Math.hypot(Math.max(0, x), Math.max(0, y)));
        }
        if (inside) expect(found).toBeLessThan(0);
        else {
          expect(found).toBeLessThanOrEqual(least + 1e-9);
          expect(Math.max(0, found)).toBeGreaterThanOrEqual(least - Math.hypot(qx, qy) / STEPS / 2 - 1e-9);
        }
        expect(Math.hypot(closest.dx, closest.dy)).toBeCloseTo(1, 9);
      }),
      { numRuns: 500 },
    );
  });
});

const kind = (radius: number, arms: PieceKind["arms"]): PieceKind => ({
  radius,
  arms,
  heightMm: 100,
  massKg: 1,
  areaMm2: Math.PI * radius * radius,
  swingMm: arms.length > 0 ? radius : 0,
});
const KINDS = [
  kind(30, []),
  kind(43, [{ angle: 0.4, length: 68, radius: 9 }]),
  kind(48, [
    { angle: 0, length: 73, radius: 9 },
    { angle: 3, length: 47, radius: 13 },
  ]),
];
const TWO_STUBS = [
  { angle: 0, length: 26, radius: 22 },
  { angle: 3, length: 28, radius: 20 },
];
const SPACE: LevelSpace = {
  bounds: [
    { region: { circle: { x: 0, y: 0, radius: 195 }, sides: [] }, marginMm: 0 },
    { region: { circle: null, sides: [{ nx: 0.6, ny: 0.8, offset: 150 }] }, marginMm: 6 },
  ],
  standoffs: [
    { obstacle: { kind: "square", x: 150, y: 20, half: 17.5, turn: 0.3 }, clearanceFor: () => 6 },
    { obstacle: { kind: "line", x1: -190, y1: 30, x2: -165, y2: 25 }, clearanceFor: () => 40 },
  ],
  gapMm: 6,
};

describe("crowding", () => {
  it.each([9, 40])("has the gradient of its own sum, for %i pieces", (count) => {
    // Arms too short to cross another piece's arm: there the sum is level, and the push is meant to part them all the same.
    const stubby = [kind(30, []), kind(38, [{ angle: 0.4, length: 28, radius: 24 }]), kind(42, TWO_STUBS)];
    const chance = seededChance(5);
    const between = { kind: "square", x: 37.5, y: 37.5, half: 8, turn: 0.3 } as const;
    const fence = { kind: "beyond", nx: -0.28, ny: -0.96, offset: 60 } as const;
    const standoffs = [
      { obstacle: between, clearanceFor: () => 20 },
      { obstacle: fence, clearanceFor: () => 10 },
      ...SPACE.standoffs.slice(1),
    ];
    const crowding = new Crowding({ ...SPACE, standoffs }, stubby, count);
    const kindOf = Int32Array.from({ length: count }, (_, i) => i % 3);
    const across = Math.ceil(Math.sqrt(count));
    const places = new Float64Array(3 * count);
    for (let i = 0; i < count; i++) {
      places[3 * i] = 75 * ((i % across) - (across - 1) / 2) + 14 * (chance.next() - 0.5);
      places[3 * i + 1] = 75 * (Math.floor(i / across) - (across - 1) / 2) + 14 * (chance.next() - 0.5);
      places[3 * i + 2] = 300 * chance.next();
    }
    const gradient = new Float64Array(3 * count);
    const scratch = new Float64Array(3 * count);
    expect(crowding.measure(kindOf, count, places, gradient)).toBeGreaterThan(0);
    const step = 1e-5;
    for (let k = 0; k < 3 * count; k++) {
      const kept = places[k] as number;
      places[k] = kept + step;
      const up = crowding.measure(kindOf, count, places, scratch);
      places[k] = kept - step;
      const down = crowding.measure(kindOf, count, places, scratch);
      places[k] = kept;
      const slope = (up - down) / (2 * step);
      expect(Math.abs(slope - (gradient[k] as number)), `number ${k}`).toBeLessThan(1e-4 * (1 + Math.abs(slope)));
    }
  });

  it("counts one piece alone as the whole does", () => {
    const chance = seededChance(9);
    const crowding = new Crowding(SPACE, KINDS, 6);
    const kindOf = Int32Array.from([0, 1, 2, 0, 1, 2]);
    const places = Float64Array.from({ length: 18 }, () => 300 * (chance.next() - 0.5));
    const scratch = new Float64Array(18);
    const whole = crowding.measure(kindOf, 6, places, scratch);
    const fewer = crowding.measure(kindOf, 5, places, scratch);
    crowding.prepare(kindOf, 6, places);
    const last = crowding.measureOne(6, places, scratch, 5, Number.POSITIVE_INFINITY);
    expect(last).toBeCloseTo(whole - fewer, 6);
  });
});

describe("parting the pieces of a level", () => {
  it("leaves nothing overlapping where it says so, and held pieces where they were", () => {
    const chance = seededChance(3);
    const separation = new Separation(new Crowding(SPACE, KINDS, 8, 1));
    const kindOf = Int32Array.from([0, 1, 2, 0, 1, 2, 0, 1]);
    const places = Float64Array.from({ length: 24 }, () => 40 * (chance.next() - 0.5));
    const [x, y, turn] = places;
    const parted = separation.part(kindOf, 8, places, { ...QUICK, hopeless: 1e9 }, chance, 180);
    expect(parted).toBe(true);
    expect([...places.subarray(0, 3)]).toEqual([x, y, turn]);
    separation.crowding.measure(kindOf, 8, places, new Float64Array(24));
    expect(separation.crowding.deepest).toBeLessThanOrEqual(TOUCH_MM);
  });

  it("asks nothing of held pieces among themselves, and everything of the others against them", () => {
    const crowding = new Crowding(SPACE, KINDS, 3, 2);
    const kindOf = Int32Array.from([0, 0, 0]);
    const gradient = new Float64Array(9);
    const apart = Float64Array.from([0, 0, 0, 10, 0, 0, 120, -60, 0]);
    expect(crowding.measure(kindOf, 3, apart, gradient)).toBe(0);
    // 30 mm of each, 6 mm of gap: 50 mm apart they lack 16.
    const near = Float64Array.from([0, 0, 0, 10, 0, 0, 60, 0, 0]);
    expect(crowding.measure(kindOf, 3, near, gradient)).toBeGreaterThan(16 ** 2);
    expect(crowding.deepest).toBeCloseTo(16, 1);
  });

  it("keeps behind a line those kinds that may not pass it, and no others", () => {
    const fence = { kind: "beyond", nx: 0, ny: 1, offset: 0 } as const;
    const bounds = [{ region: { circle: { x: 0, y: 0, radius: 195 }, sides: [] }, marginMm: 0 }];
    const low = { ...kind(30, []), heightMm: 50 };
    const clearanceFor = (heightMm: number): number => (heightMm > 60 ? 6 : Number.NEGATIVE_INFINITY);
    const crowding = new Crowding(
      { bounds, standoffs: [{ obstacle: fence, clearanceFor }], gapMm: 6 },
      [low, kind(30, [])],
      1,
    );
    const scratch = new Float64Array(3);
    expect(crowding.measure(Int32Array.of(0), 1, Float64Array.of(0, 20, 0), scratch)).toBe(0);
    crowding.measure(Int32Array.of(1), 1, Float64Array.of(0, 20, 0), scratch);
    // 20 mm beyond, 30 mm of its own and 6 mm to keep.
    expect(crowding.deepest).toBeCloseTo(56, 1);
  });

  it("does not claim to part what cannot be parted", () => {
    const chance = seededChance(3);
    const separation = new Separation(new Crowding(SPACE, KINDS, 30));
    const kindOf = new Int32Array(30).fill(2);
    const places = Float64Array.from({ length: 90 }, () => 200 * (chance.next() - 0.5));
    expect(separation.part(kindOf, 30, places, QUICK, chance, 180)).toBe(false);
  });
});
