import fc from "fast-check";
import { expect, test } from "vitest";
import { type Direction, nextInDirection } from "./in-direction.ts";

const at = (x: number, y: number) => ({ x, y });

test("the next piece is the one straight ahead rather than a nearer one far off to the side", () => {
  const [from, ahead, aside] = [at(0, 0), at(100, 10), at(40, 90)];
  expect(nextInDirection([from, ahead, aside], from, "right")).toBe(ahead);
  expect(nextInDirection([from, ahead, aside], from, "up")).toBe(aside);
});

test("up is the far side, and where nothing stands that way there is none", () => {
  const [from, far] = [at(0, 0), at(0, 50)];
  expect(nextInDirection([from, far], from, "up")).toBe(far);
  expect(nextInDirection([from, far], from, "down")).toBeNull();
});

test("every piece is reached from every other by going in some direction again and again", () => {
  const whole = fc.integer({ min: -20, max: 20 });
  const places = fc.uniqueArray(fc.tuple(whole, whole), { minLength: 2, maxLength: 8, selector: (p) => p.join() });
  fc.assert(
    fc.property(places, (all) => {
      const things = all.map(([x, y]) => at(x, y));
      const reached = new Set([things[0]]);
      for (const from of reached) {
        for (const direction of ["left", "right", "up", "down"] satisfies Direction[]) {
          const next = from && nextInDirection(things, from, direction);
          if (next) reached.add(next);
        }
      }
      expect(reached.size).toBe(things.length);
    }),
  );
});
