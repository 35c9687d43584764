import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inOrder, newestOf, pauseMs, placeAfter, type WaitingCommand } from "./line.ts";

const waiting = (place: string, name: string, more: Partial<WaitingCommand> = {}): WaitingCommand => ({
  place,
  key: `key-${place}`,
  name,
  input: {},
  before: {},
  ...more,
});

describe("pauses between tries", () => {
  test("begin short, grow, and stay at half a minute", () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8, 100].map(pauseMs)).toEqual([
      500, 1000, 2000, 4000, 8000, 16_000, 30_000, 30_000, 30_000,
    ]);
  });
});

describe("places in the line", () => {
  test("keep the order of giving, even where the clock stands still or is set back", () => {
    const clocks = fc.array(fc.integer({ min: 0, max: 4e12 }), { minLength: 2, maxLength: 50 });
    const keepsOrder = fc.property(clocks, (times) => {
      const places: string[] = [];
      for (const time of times) places.push(placeAfter(time, places.at(-1) ?? null));
      expect([...places].sort()).toEqual(places);
      expect(new Set(places).size).toBe(places.length);
    });
    fc.assert(keepsOrder, { seed: 3 });
  });

  test("are read in order however they were stored", () => {
    const line = [waiting("3", "c"), waiting("1", "a"), waiting("2", "b")];
    expect(inOrder(line).map(({ name }) => name)).toEqual(["a", "b", "c"]);
  });
});

describe("the newest waiting command of a scope", () => {
  const scopeOf = (name: string) => name.slice(0, 1);
  const line = [waiting("2", "w2"), waiting("1", "w1"), waiting("3", "k1"), waiting("4", "w3", { takenBack: true })];

  test("leaves other scopes and what was taken back alone", () => {
    expect(newestOf(line, "w", scopeOf)?.name).toBe("w2");
    expect(newestOf(line, "k", scopeOf)?.name).toBe("k1");
    expect(newestOf(line, "x", scopeOf)).toBeNull();
  });
});
