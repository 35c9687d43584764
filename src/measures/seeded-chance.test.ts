import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededChance } from "./seeded-chance.ts";

/**
 * xoshiro128** again, from its published listing (Blackman and Vigna, xoshiro128starstar.c, 2018, public domain; from
 * memory), in whole numbers of any size instead of 32-bit tricks; its state filled by splitmix32.
 */
function slowBits(seed: number): () => bigint {
  const word = (value: bigint): bigint => BigInt.asUintN(32, value);
  const turned = (value: bigint, by: bigint): bigint => word((value << by) | (value >> (32n - by)));
  let fill = word(BigInt(seed));
  const next = (): bigint => {
    fill = word(fill + 0x9e3779b9n);
    let mixed = word((fill ^ (fill >> 16n)) * 0x21f0aaadn);
    mixed = word((mixed ^ (mixed >> 15n)) * 0x735a2d97n);
    return mixed ^ (mixed >> 15n);
  };
  const state = [next(), next(), next(), next() | 1n] as [bigint, bigint, bigint, bigint];
  return () => {
    const result = word(turned(word(state[1] * 5n), 7n) * 9n);
    const shifted = word(state[1] << 9n);
    state[2] ^= state[0];
    state[3] ^= state[1];
    state[1] ^= state[2];
    state[0] ^= state[3];
    state[2] ^= shifted;
    state[3] = turned(state[3], 11n);
    return result;
  };
}

describe("seeded chance", () => {
  test("is the published generator, bit for bit", () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const chance = seededChance(seed);
        const slow = slowBits(seed);
        for (let i = 0; i < 50; i += 1) expect(chance.next()).toBe(Number(slow()) / 2 ** 32);
      }),
      { numRuns: 50 },
    );
  });

  test("the same seed gives the same run, another seed another", () => {
    const run = (seed: number): number[] => Array.from({ length: 20 }, seededChance(seed).next);
    expect(run(7)).toEqual(run(7));
    expect(run(7)).not.toEqual(run(8));
    expect(run(0)).not.toEqual(run(1));
  });

  test("stays within its bounds", () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 1000 }), (seed, below) => {
        const chance = seededChance(seed);
        for (let i = 0; i < 20; i += 1) {
          const next = chance.next();
          expect(next >= 0 && next < 1).toBe(true);
          const whole = chance.below(below);
          expect(Number.isInteger(whole) && whole >= 0 && whole < below).toBe(true);
        }
      }),
    );
  });

  test("falls evenly: 16 boxes, 64,000 draws, Pearson's chi-square below its 1 in 1000 bound", () => {
    const chance = seededChance(2026);
    const boxes = new Array<number>(16).fill(0);
    for (let i = 0; i < 64_000; i += 1) {
      const box = chance.below(16);
      boxes[box] = (boxes[box] as number) + 1;
    }
    const square = boxes.reduce((sum, count) => sum + (count - 4000) ** 2 / 4000, 0);
    // 15 degrees of freedom, upper 0.001 point 37.70 (any table of the chi-square distribution; from memory).
    expect(square).toBeLessThan(37.7);
    expect(square).toBeGreaterThan(0);
  });
});
