import { describe, expect, it } from "vitest";
import { equalInCircle, equalInSquare, type RecordCase, unequalInCircle } from "./records.ts";
import { smallestContainer } from "./smallest-container.ts";

// Sources of every record: README.md here. The full table, with times, is benchmarks/packing-records.ts.

/** Looks until the record is met to a share, or a count of looks is spent: the same on every machine. */
function packed(problem: RecordCase, within: number, mostLooks: number) {
  let looks = 0;
  return smallestContainer(
    problem.radii,
    problem.container,
    1,
    (best) => best > problem.record * (1 + within) && looks++ < mostLooks,
  );
}

/** By how much the discs overlap each other or pass the container, at worst; measured here and not by the kernel. */
function deepestOverlap(problem: RecordCase, { size, centres }: ReturnType<typeof smallestContainer>): number {
  const radii = [...problem.radii].sort((a, b) => b - a);
  let deepest = 0;
  centres.forEach(([x, y], i) => {
    const radius = radii[i] as number;
    const out = problem.container === "circle" ? Math.hypot(x, y) : Math.max(Math.abs(x), Math.abs(y));
    deepest = Math.max(deepest, out + radius - size);
    centres.slice(0, i).forEach(([u, v], j) => {
      deepest = Math.max(deepest, radius + (radii[j] as number) - Math.hypot(x - u, y - v));
    });
  });
  return deepest;
}

describe("the kernel that packs shelves, against published records of disc packing", () => {
  it.each([2, 3, 7, 10, 12, 13, 19, 20, 30, 37])(
    "packs %i equal discs in a circle within 0.1 %% of the record",
    (count) => {
      const problem = equalInCircle(count);
      const found = packed(problem, 1e-3, 20_000);
      expect(found.size / problem.record).toBeLessThan(1.001);
      // Nobody has ever done better: less than the record would mean overlapping discs.
      expect(found.size / problem.record).toBeGreaterThan(1 - 1e-9);
      expect(deepestOverlap(problem, found)).toBeLessThan(1e-9);
    },
  );

  it.each([4, 5, 9, 10, 14, 20])("packs %i equal discs in a square within 0.1 %% of the record", (count) => {
    const problem = equalInSquare(count);
    const found = packed(problem, 1e-3, 20_000);
    expect(found.size / problem.record).toBeLessThan(1.001);
    expect(found.size / problem.record).toBeGreaterThan(1 - 1e-9);
    expect(deepestOverlap(problem, found)).toBeLessThan(1e-9);
  });

  it.each(["NR10-1", "NR12-1", "NR15-1", "NR17-1"])(
    "packs the unequal discs of %s within 1 %% of the record",
    (name) => {
      const problem = unequalInCircle(name);
      const found = packed(problem, 1e-2, 20_000);
      expect(found.size / problem.record).toBeLessThan(1.01);
      expect(deepestOverlap(problem, found)).toBeLessThan(1e-9 * problem.record);
    },
  );
});
