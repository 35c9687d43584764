import fc from "fast-check";
import { expect, test } from "vitest";
import { nextByArrow } from "./in-direction.ts";

const at = (x: number, y: number) => ({ x, y });

test("up and down go to the piece straight ahead rather than a nearer one far off to the side", () => {
  const [from, ahead, aside] = [at(0, 0), at(10, 100), at(90, 40)];
  expect(nextByArrow([ahead, aside, from], from, "up")).toBe(ahead);
});

test("up is the far side, and where nothing stands that way there is none", () => {
  const [from, far] = [at(0, 0), at(0, 50)];
  expect(nextByArrow([far, from], from, "up")).toBe(far);
  expect(nextByArrow([far, from], from, "down")).toBeNull();
});

test("every piece is reached from the first by going right, and back by going left", () => {
  const whole = fc.integer({ min: -20, max: 20 });
  const places = fc.uniqueArray(fc.tuple(whole, whole), { minLength: 2, maxLength: 8, selector: (p) => p.join() });
  fc.assert(
    fc.property(places, (all) => {
      const things = all.map(([x, y]) => at(x, y));
      const walked: unknown[] = [];
      for (let now = things[0] ?? null; now; now = nextByArrow(things, now, "right")) walked.push(now);
      expect(walked).toEqual(things);
      for (let now = things.at(-1) ?? null; now; now = nextByArrow(things, now, "left")) walked.pop();
      expect(walked).toEqual([]);
    }),
  );
});
