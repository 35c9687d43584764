import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Level, LoadPlanFile, Placement } from "../../loading/load-plan.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { carried, followPieces, type Place, placementAt } from "./places.ts";

const at = (ware: string, xMm: number, yMm = 0, turnDeg = 0): Placement => ({ ware, xMm, yMm, turnDeg });
const level = (topMm: number, ...placements: Placement[]): Level => ({
  ...{ shelf: "full", topMm, xMm: 0, yMm: 0, turnDeg: 0, posts: [] },
  placements,
});
const plan = (...levels: Level[]): LoadPlanFile => ({ format: "load-plan/1", levels, left: [] });
const place = (level: number, placement: number): Place => ({ level, placement });

describe("a piece is followed into another plan", () => {
  const before = plan(level(41, at("cup", -80), at("bowl", 60)), level(200, at("vase", 0)));

  test("to where it stands still, whatever its number is now", () => {
    const fewer = plan(level(41, at("bowl", 60)), level(120), level(200, at("cup", 90), at("vase", 0)));
    const follow = followPieces(before, fewer);
    expect(follow(place(0, 1))).toEqual(place(0, 0));
    expect(follow(place(1, 0))).toEqual(place(2, 1));
    expect(follow(place(0, 0))).toBeNull();
  });

  test("not to a shelf at another height, where it would have to be set down again", () => {
    const raised = plan(level(66, at("cup", -80), at("bowl", 60)), level(200, at("vase", 0)));
    const follow = followPieces(before, raised);
    expect([follow(place(0, 0)), follow(place(0, 1)), follow(place(1, 0))]).toEqual([null, null, place(1, 0)]);
  });

  test("by a whole turn more, or a hundredth of a millimetre, it has not moved; by half a one it has", () => {
    const same = plan(level(41, at("cup", -80.004, 0, 360), at("bowl", 60.5)));
    expect(followPieces(before, same)(place(0, 0))).toEqual(place(0, 0));
    expect(followPieces(before, same)(place(0, 1))).toBeNull();
  });

  test("where the move is told, wherever it went; another piece in its old spot is not it", () => {
    const swapped = plan(level(41, at("cup", -80), at("cup", 20)), level(200, at("vase", 0)));
    const twoCups = plan(level(41, at("cup", -80), at("cup", 90)), level(200, at("vase", 0)));
    const follow = followPieces(twoCups, swapped, [
      { from: place(0, 0), to: place(0, 1) },
      { from: place(0, 1), to: place(0, 0) },
    ]);
    expect([follow(place(0, 0)), follow(place(0, 1))]).toEqual([place(0, 1), place(0, 0)]);
  });

  test("a piece that is gone is not the one that was moved to its spot", () => {
    const twoCups = plan(level(41, at("cup", -80), at("cup", 20)));
    const follow = followPieces(twoCups, plan(level(41, at("cup", 20))), [{ from: place(0, 0), to: place(0, 0) }]);
    expect([follow(place(0, 0)), follow(place(0, 1))]).toEqual([place(0, 0), null]);
  });

  test("a move from nowhere, to nowhere or into another kind of piece is refused", () => {
    for (const [from, to] of [
      [place(0, 7), place(0, 0)],
      [place(0, 0), place(4, 0)],
      [place(0, 0), place(0, 1)],
    ] as const) {
      expect(() => followPieces(before, before, [{ from, to }])).toThrow(
        expect.objectContaining({ code: "unknown-place", path: "moves[0]" }),
      );
    }
  });

  test("whatever is taken out, put in or put in another order, each piece that stayed keeps its tick and no other gets one", () => {
    const spots = fc.uniqueArray(fc.integer({ min: -150, max: 150 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(
        spots,
        fc.array(fc.boolean(), { minLength: 12 }),
        fc.integer({ min: 1, max: 99 }),
        (xs, stays, seed) => {
          const was = plan(level(41, ...xs.map((x) => at("cup", x))));
          const kept = xs.filter((_, i) => stays[i]).sort((a, b) => ((a * seed) % 101) - ((b * seed) % 101));
          const now = plan(level(41, ...kept.map((x) => at("cup", x)), at("cup", 777)));
          const follow = followPieces(was, now);
          xs.forEach((x, i) => {
            const to = follow(place(0, i));
            expect(to && placementAt(now, to)?.xMm).toBe(stays[i] ? x : null);
          });
        },
      ),
    );
  });
});

test("a load's pins, ticks and ticks taken back go along", () => {
  const before = plan(level(41, at("cup", -80), at("bowl", 60), at("cup", 0)));
  const after = plan(level(41, at("cup", 0), at("bowl", 60)));
  const load = {
    pins: [place(0, 0), place(0, 1)],
    ticks: [{ ...place(0, 2), at: "2026-11-25T12:00:00.000Z" }],
    takenBack: [{ ...place(0, 1), at: "2026-11-25T12:00:00.000Z" }],
  } as unknown as LoadRecord;
  expect(carried(load, followPieces(before, after))).toEqual({
    pins: [place(0, 1)],
    ticks: [{ ...place(0, 0), at: "2026-11-25T12:00:00.000Z" }],
    takenBack: [{ ...place(0, 1), at: "2026-11-25T12:00:00.000Z" }],
  });
  expect(carried(load, followPieces(before, null))).toEqual({ pins: [], ticks: [], takenBack: [] });
});
