import { expect, test } from "vitest";
import { readLoadPlan } from "../../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../../loading/read-load-request.ts";
import { batch, load, planOf } from "../../loads/testing/example-load.ts";
import { takeUp } from "./hand.ts";
import { placeOf, steadyTurn } from "./under-pointer.ts";

// Two mugs of 86 mm across whose gap is 6 mm: their axes stand at least 92 mm apart.
const record = load("l1", [batch("mug", { count: 3 })], null);
const request = readLoadRequest(record.request);
const file = planOf(["mug", "mug"]);
file.levels[0]?.placements.splice(1, 1, { ware: "mug", xMm: -60, yMm: 0, turnDeg: 0 });
const plan = readLoadPlan(file, request);
const hand = takeUp(request, plan, { level: 0, placement: 0 }, 0);
const at = (xMm: number, snaps?: boolean) => hand?.at({ xMm, yMm: 0, turnDeg: 0 }, 0, snaps);

test("a step short of where it may stand, a piece goes there by itself", () => {
  const state = at(30.5);
  expect([state?.isSnapped, state?.broken]).toEqual([true, []]);
  const apart = Math.hypot((state?.spot.xMm ?? 0) + 60, state?.spot.yMm ?? 0);
  expect(apart).toBeGreaterThanOrEqual(92 - 1e-3);
  expect(apart).toBeLessThan(92.3);
});

test("farther off it stays in the hand, and the rule it breaks is told", () => {
  const state = at(20);
  expect([state?.isSnapped, state?.spot.xMm]).toEqual([false, 20]);
  expect(state?.broken.map(({ rule, foundMm }) => [rule, foundMm])).toEqual([["gapMm", 80 - 86]]);
});

test("moved by keys it never goes anywhere by itself", () => {
  expect(at(30.5, false)?.spot.xMm).toBe(30.5);
});

test("what is asked about is what would be kept: tenths, and a turn within the circle", () => {
  expect(hand?.at({ xMm: 100.04, yMm: -0.04, turnDeg: -30 }, 0).spot).toEqual({ xMm: 100, yMm: 0, turnDeg: 330 });
});

test("a piece that waits is taken up too; one that is not there is not", () => {
  expect(takeUp(request, plan, { ware: "mug" }, 0)?.from).toBeNull();
  expect(takeUp(request, plan, { ware: "jug" }, 0)).toBeNull();
  expect(takeUp(request, plan, { level: 0, placement: 9 }, 0)).toBeNull();
});

test("turned by hand, a piece stays a little at every 15°", () => {
  expect([12, 17.6, 19, -44, 7.4].map(steadyTurn)).toEqual([15, 15, 19, -45, 7]);
  expect(placeOf("2.13")).toEqual({ level: 2, placement: 13 });
});
