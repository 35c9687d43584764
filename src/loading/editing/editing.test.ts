import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkPieceIn, checkPlan } from "../checker/check-plan.ts";
import { clearances } from "../checker/clearances.ts";
import { sceneOf } from "../checker/scene.ts";
import type { LoadPlan } from "../load-plan.ts";
import { planLoad } from "../planner/plan-load.ts";
import { readLoadPlan } from "../read-load-plan.ts";
import { readLoadRequest } from "../read-load-request.ts";
import { EIGHT_SIDED } from "../testing/random-loads.ts";
import { randomRequest } from "../testing/random-requests.ts";
import { addLevel, changeShelf, moveColumn, removeLevel, setLevelHeight, turnShelf } from "./edit-levels.ts";
import { movePiece, moveToLevel, putIn, swapPieces, takeOut, turnPiece } from "./edit-pieces.ts";
import { findRoom } from "./find-room.ts";
import { levelHeights, stacksOf } from "./level-heights.ts";
import { holdPiece } from "./live-answer.ts";
import { type Edited, waitingCounts } from "./open-plan.ts";

const request = EIGHT_SIDED;
const plan = planned(request, 4);

function planned(wanted: typeof request, seed: number): LoadPlan {
  const outcome = planLoad(wanted, { seed, workLimit: 30_000 });
  if (outcome.kind === "impossible") throw new Error("the test's own load cannot be made");
  return outcome.plan;
}

const frozen = <Kept>(value: Kept): Kept => {
  if (value !== null && typeof value === "object") Object.values(Object.freeze(value)).forEach(frozen);
  return value;
};
frozen(plan);

const spot = fc.record({
  xMm: fc.double({ min: -250, max: 250, noNaN: true }),
  yMm: fc.double({ min: -250, max: 250, noNaN: true }),
  turnDeg: fc.double({ min: -720, max: 720, noNaN: true }),
});

/** One random thing done to a plan; whatever numbers come are brought within what is there. */
const edit = fc
  .record({ what: fc.nat(8), a: fc.nat(99), b: fc.nat(99), c: fc.nat(99), spot })
  .map(({ what, a, b, c, spot: at }) => (before: LoadPlan): Edited => {
    const places = before.levels.flatMap(({ placements }, level) =>
      placements.map((_, placement) => ({ level, placement })),
    );
    const unchanged = { plan: before, moves: places.map((place) => ({ from: place, to: place })) };
    const place = places[a % Math.max(1, places.length)];
    const other = places[b % Math.max(1, places.length)];
    const level = c % Math.max(1, before.levels.length);
    const stacks = stacksOf(request.furniture.posts);
    const stack = stacks[b % stacks.length] as (typeof stacks)[number];
    if (what === 7) {
      const above = c % 3 === 0 || before.levels.length === 0 ? null : level;
      return addLevel(request, before, { above, shelf: "full", heightsMm: stack.heightsMm });
    }
    if (before.levels.length === 0) return unchanged;
    if (what === 5) return setLevelHeight(request, before, level, stack.heightsMm);
    if (what === 6) return removeLevel(request, before, level);
    if (what === 8) {
      const waiting = [...waitingCounts(request, before)].filter(([, count]) => count > 0).map(([ware]) => ware);
      return waiting.length > 0 ? putIn(request, before, waiting[a % waiting.length] as string, level, at) : unchanged;
    }
    if (!place || !other) return unchanged;
    if (what === 0) return movePiece(request, before, place, at);
    if (what === 1) return turnPiece(request, before, place, at.turnDeg);
    if (what === 2) return moveToLevel(request, before, place, level, at);
    if (what === 3) return swapPieces(request, before, place, other);
    return takeOut(request, before, place);
  });

describe("editing a plan", () => {
  test("whatever is done, every piece is in or left, and the plan it was done to is as it was", () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
        let now = plan;
        for (const each of edits) now = frozen(each(now).plan);
        const counts = new Map(request.ware.map(({ name, count }) => [name, count]));
        for (const { placements } of now.levels)
          for (const { ware } of placements) counts.set(ware, (counts.get(ware) as number) - 1);
        for (const { ware, count } of now.left) counts.set(ware, (counts.get(ware) as number) - count);
        expect([...counts.values()].every((count) => count === 0)).toBe(true);
        expect(now.levels.every(({ topMm }, i) => i === 0 || topMm >= (now.levels[i - 1]?.topMm ?? 0))).toBe(true);
        readLoadPlan(JSON.parse(JSON.stringify(now)), request);
      }),
      { numRuns: 150 },
    );
  });

  test("every piece that stays is followed to its new place, each to one of its own", () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        let now = plan;
        for (const each of edits) {
          const { plan: next, moves } = each(now);
          for (const { from, to } of moves) {
            const [was, is] = [now.levels[from.level], next.levels[to.level]];
            expect(is?.placements[to.placement]?.ware).toBe(was?.placements[from.placement]?.ware);
          }
          const arrivals = new Set(moves.map(({ to }) => `${to.level}.${to.placement}`));
          expect(arrivals.size).toBe(moves.length);
          now = next;
        }
      }),
      { numRuns: 100 },
    );
  });

  test("raising a level lifts all that stands on it by as much, and its posts still reach", () => {
    const level = 1;
    for (const height of levelHeights(request, plan, level)) {
      const { plan: raised } = setLevelHeight(request, plan, level, height.heightsMm);
      expect(raised.levels[level]?.topMm).toBeCloseTo(height.topMm, 9);
      const by = height.topMm - (plan.levels[level]?.topMm ?? 0);
      plan.levels.slice(level).forEach(({ topMm }, i) => {
        expect(raised.levels[level + i]?.topMm).toBeCloseTo(topMm + by, 9);
      });
      expect(checkPlan(request, raised).filter(({ rule }) => rule === "postHeights")).toEqual([]);
    }
  });

  test("a level put in and taken out again leaves the load as it was", () => {
    for (const above of [null, 0, 1]) {
      const added = addLevel(request, plan, { above, shelf: "full", heightsMm: [25] }).plan;
      expect(added.levels.length).toBe(plan.levels.length + 1);
      expect(checkPlan(request, added).filter(({ rule }) => /^post(Heights|Align)/.test(rule))).toEqual([]);
      const again = removeLevel(request, added, above === null ? 0 : above + 1).plan;
      expect(again.levels).toEqual(plan.levels);
    }
  });

  test("the first level of an empty kiln stands on three posts that carry it, full shelf or half", () => {
    const empty: LoadPlan = { format: "load-plan/1", levels: [], left: [], figures: {} };
    for (const { name } of request.furniture.shelves) {
      const first = addLevel(request, empty, { above: null, shelf: name, heightsMm: [25] }).plan;
      const broken = checkPlan(request, first).filter(({ rule }) => rule !== "shelfWallMm");
      expect(broken.map(({ message }) => message)).toEqual([]);
    }
  });

  test("a column moves whole: its posts stay one above another", () => {
    const post = plan.levels[2]?.posts[0];
    const { plan: moved } = moveColumn(request, plan, 2, 0, (post?.xMm ?? 0) * 0.9, (post?.yMm ?? 0) * 0.9);
    expect(checkPlan(request, moved).filter(({ rule }) => rule === "postAlignMm")).toEqual([]);
    expect(moved.levels[0]?.posts).not.toEqual(plan.levels[0]?.posts);
  });

  test("a shelf is turned and changed for another kind without moving what stands on it", () => {
    const turned = turnShelf(request, plan, 0, 400).plan;
    expect(turned.levels[0]?.turnDeg).toBe(40);
    expect(changeShelf(request, plan, 0, "octagon").plan.levels[0]?.placements).toEqual(plan.levels[0]?.placements);
  });

  test("what cannot be done is refused with what would do", () => {
    expect(() => movePiece(request, plan, { level: 9, placement: 0 }, { xMm: 0, yMm: 0, turnDeg: 0 })).toThrow(
      /levels\[9\]/,
    );
    expect(() => putIn(request, plan, "egg cup", 0, { xMm: 0, yMm: 0, turnDeg: 0 })).toThrow(/does not know/);
    const gone = takeOut(request, plan, { level: 0, placement: 0 }).plan;
    expect(gone.left.some(({ reason }) => reason === "taken out by hand")).toBe(true);
  });
});

test("the planner's bound outlives an edit of pieces and none of shelves, its other figures neither", () => {
  const before = { ...plan, figures: { ...plan.figures, valueBound: 123, seconds: 9 } };
  const { figures } = takeOut(request, before, { level: 0, placement: 0 }).plan;
  expect(figures.valueBound).toBe(123);
  expect(figures).not.toHaveProperty("seconds");
  expect(removeLevel(request, before, 0).plan.figures).not.toHaveProperty("valueBound");
});

describe("the answer while a piece is held", () => {
  test("says what the checker says of the plan with the piece set down there, and the same distances", () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(999), fc.nat(9), spot, (seed, piece, onto, at) => {
        const wanted = seed === 0 ? request : asked(seed);
        const load = seed === 0 ? plan : plans.get(seed);
        if (!wanted || !load) return;
        const places = load.levels.flatMap(({ placements }, level) =>
          placements.map((_, placement) => ({ level, placement })),
        );
        const place = places[piece % places.length];
        if (!place) return;
        const level = onto % load.levels.length;
        const held = holdPiece(wanted, load, place);
        const edited = moveToLevel(wanted, load, place, level, at);
        const to = edited.moves.find(
          ({ from }) => from.level === place.level && from.placement === place.placement,
        )?.to;
        if (!to || !held) throw new Error("the piece was lost");
        const told = held.answer({ ...at, turnDeg: at.turnDeg }, level);
        const checked = checkPieceIn(sceneOf(wanted, edited.plan), to.level, to.placement);
        expect(told.broken.map(({ rule, foundMm }) => [rule, round(foundMm)])).toEqual(
          checked.map(({ rule, foundMm }) => [rule, round(foundMm)]),
        );
        expect(held.mayStand(at, level)).toBe(checked.length === 0);
        const near = clearances(wanted, edited.plan, to.level, to.placement);
        expect(told.near.map(({ kind, distanceMm, to: name }) => [kind, round(distanceMm), name])).toEqual(
          near.map(({ kind, distanceMm, to: name }) => [kind, round(distanceMm), name]),
        );
      }),
      { numRuns: 300 },
    );
  });

  test("room is found where the checker finds nothing broken, and the wish itself where it will do", () => {
    fc.assert(
      fc.property(fc.nat(999), spot, (piece, wish) => {
        const places = plan.levels.flatMap(({ placements }, level) =>
          placements.map((_, placement) => ({ level, placement })),
        );
        const place = places[piece % places.length];
        if (!place) return;
        const held = holdPiece(request, plan, place);
        if (!held) throw new Error("no such piece");
        const found = findRoom(held, place.level, wish);
        if (held.mayStand(wish, place.level)) expect(found).toEqual(wish);
        if (!found) return;
        const moved = movePiece(request, plan, place, found).plan;
        expect(checkPieceIn(sceneOf(request, moved), place.level, place.placement)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test("a piece lifted off its own place finds it again", () => {
    plan.levels.forEach(({ placements }, level) => {
      placements.forEach((standing, placement) => {
        const held = holdPiece(request, plan, { level, placement });
        expect(held && findRoom(held, level, standing, 3)).toBeTruthy();
      });
    });
  });
});

const round = (mm: number | null): number | null => (mm === null ? null : Math.round(mm * 1e6) / 1e6);

function asked(seed: number): typeof request | null {
  try {
    return readLoadRequest(JSON.parse(JSON.stringify(randomRequest(seed))));
  } catch {
    return randomRequest(seed);
  }
}

const plans = new Map<number, LoadPlan>(
  Array.from({ length: 40 }, (_, i) => i + 1).flatMap((seed): [number, LoadPlan][] => {
    const outcome = planLoad(randomRequest(seed), { seed, workLimit: 4000 });
    return outcome.kind === "planned" ? [[seed, outcome.plan]] : [];
  }),
);
