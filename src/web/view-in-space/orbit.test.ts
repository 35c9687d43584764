import { describe, expect, test } from "vitest";
import { liftsOf } from "./lift.ts";
import { loadInWords } from "./load-in-words.ts";
import { eyeAt, FIRST_LOOK, nearer, turned } from "./orbit.ts";

const sight = { reachMm: 240, heightMm: 460, aspect: 1.5, openingDeg: 35 };

describe("the eye about the kiln", () => {
  test("turns full circle, and neither dives under the floor nor tips over the top", () => {
    expect(turned({ turnDeg: 170, tiltDeg: 20, nearness: 1 }, 20, 0).turnDeg).toBeCloseTo(-170, 9);
    expect(turned(FIRST_LOOK, 0, 500).tiltDeg).toBe(88);
    expect(turned(FIRST_LOOK, 0, -500).tiltDeg).toBe(-10);
    expect(nearer(FIRST_LOOK, 1000).nearness).toBe(5);
    expect(nearer(FIRST_LOOK, 0.001).nearness).toBe(0.6);
  });

  test("stands in front at a turn of nothing, to the right of it at a quarter turn", () => {
    const front = eyeAt({ turnDeg: 0, tiltDeg: 0, nearness: 1 }, sight);
    expect(front.x).toBeCloseTo(0, 9);
    expect(front.z).toBeGreaterThan(0);
    expect(front.y).toBe(front.targetY);
    expect(eyeAt({ turnDeg: 90, tiltDeg: 0, nearness: 1 }, sight).x).toBeCloseTo(front.z, 9);
  });

  test("sees the whole kiln on a wide screen and on a tall one", () => {
    for (const aspect of [0.5, 1, 2]) {
      const { z } = eyeAt({ turnDeg: 0, tiltDeg: 0, nearness: 1 }, { ...sight, aspect });
      const upDown = Math.tan((17.5 * Math.PI) / 180) * (z - sight.reachMm);
      expect(upDown).toBeGreaterThan(sight.heightMm / 2);
      expect(upDown * aspect).toBeGreaterThan(0.9 * sight.reachMm);
    }
  });
});

describe("levels lifted apart", () => {
  test("each rises by as much more than the one beneath; halves at one height rise together", () => {
    expect(liftsOf([41, 160, 160.4, 300], 400, 0)).toEqual([0, 0, 0, 0]);
    const [first, second, half, third] = liftsOf([41, 160, 160.4, 300], 400, 1) as [number, number, number, number];
    expect(first).toBe(0);
    expect(second).toBeGreaterThan(0);
    expect(half).toBe(second);
    expect(third).toBeCloseTo(2 * second, 9);
  });

  test("in any order of levels", () => {
    expect(liftsOf([300, 41], 400, 1)[1]).toBe(0);
    expect(liftsOf([300, 41], 400, 1)[0]).toBeGreaterThan(0);
  });
});

test("a load in words names what stands on each level, from the top down", () => {
  const place = { xMm: 0, yMm: 0, turnDeg: 0 };
  const level = { shelf: "full", xMm: 0, yMm: 0, turnDeg: 0, posts: [] };
  const words = loadInWords({
    format: "load-plan/1",
    levels: [
      { ...level, topMm: 41, placements: ["mug", "bowl", "mug"].map((ware) => ({ ware, ...place })) },
      { ...level, topMm: 160, placements: [] },
    ],
    left: [],
    figures: {},
  });
  expect(words).toEqual([
    { level: 1, topMm: 160, pieces: 0, kinds: [] },
    {
      level: 0,
      topMm: 41,
      pieces: 3,
      kinds: [
        { ware: "mug", placements: [0, 2] },
        { ware: "bowl", placements: [1] },
      ],
    },
  ]);
});
