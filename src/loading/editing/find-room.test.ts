import fc from "fast-check";
import { expect, test } from "vitest";
import type { LoadPlan } from "../load-plan.ts";
import { planLoad } from "../planner/plan-load.ts";
import { EIGHT_SIDED } from "../testing/random-loads.ts";
import { takeOut } from "./edit-pieces.ts";
import { findRoom } from "./find-room.ts";
import { holdPiece } from "./live-answer.ts";

const outcome = planLoad(EIGHT_SIDED, { seed: 4, workLimit: 60_000 });
if (outcome.kind === "impossible") throw new Error("the test's own load cannot be made");
const { plan } = outcome;
const places = plan.levels.flatMap(({ placements }, level) => placements.map((_, placement) => ({ level, placement })));

const wishes = fc.record({
  piece: fc.nat(places.length - 1),
  xMm: fc.double({ min: -220, max: 220, noNaN: true }),
  yMm: fc.double({ min: -220, max: 220, noNaN: true }),
});

test("a piece taken out of a tightly packed level finds its hole again from the middle of the shelf", () => {
  for (const place of places) {
    const was = plan.levels[place.level]?.placements[place.placement];
    const without: LoadPlan = takeOut(EIGHT_SIDED, plan, place).plan;
    const held = holdPiece(EIGHT_SIDED, without, { ware: was?.ware ?? "" });
    const found = held && findRoom(held, place.level, { xMm: 0, yMm: 0, turnDeg: was?.turnDeg ?? 0 });
    expect(found, `${was?.ware} on level ${place.level + 1}`).not.toBeNull();
  }
});

test("no place on a fine grid that would do is nearer to the wish than the one found, but for a little", () => {
  fc.assert(
    fc.property(wishes, ({ piece, xMm, yMm }) => {
      const place = places[piece] as (typeof places)[number];
      const held = holdPiece(EIGHT_SIDED, plan, place);
      if (!held) throw new Error("no such piece");
      const turnDeg = plan.levels[place.level]?.placements[place.placement]?.turnDeg ?? 0;
      const wish = { xMm, yMm, turnDeg };
      const found = findRoom(held, place.level, wish);
      if (!found) return;
      expect(held.mayStand(found, place.level)).toBe(true);
      if (found.turnDeg !== turnDeg) return;
      const away = Math.hypot(found.xMm - xMm, found.yMm - yMm);
      for (let x = -190; x <= 190; x += 5) {
        for (let y = -190; y <= 190; y += 5) {
          if (Math.hypot(x - xMm, y - yMm) > 0.95 * away - 0.3) continue;
          expect(held.mayStand({ xMm: x, yMm: y, turnDeg }, place.level), `${x}, ${y}`).toBe(false);
        }
      }
    }),
    { numRuns: 25 },
  );
});

test("it never tells a piece to move farther than it must before it may stand", () => {
  fc.assert(
    fc.property(wishes, fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), ({ piece, xMm, yMm }, angle) => {
      const place = places[piece] as (typeof places)[number];
      const held = holdPiece(EIGHT_SIDED, plan, place);
      const short = held?.shortMm({ xMm, yMm, turnDeg: 0 }, place.level) ?? 0;
      if (!held || !(short > 0.01) || short === Number.POSITIVE_INFINITY) return;
      for (const share of [0.3, 0.7, 0.99]) {
        const to = short * share;
        const spot = { xMm: xMm + to * Math.cos(angle), yMm: yMm + to * Math.sin(angle), turnDeg: 0 };
        expect(held.mayStand(spot, place.level)).toBe(false);
      }
    }),
    { numRuns: 400 },
  );
});

test("where the level is too low for a piece it is said at once", () => {
  const low: LoadPlan = { ...plan, levels: plan.levels.map((level) => ({ ...level, placements: [] })) };
  const held = holdPiece(EIGHT_SIDED, low, { ware: "vase" });
  const room = plan.levels.map((_, level) => held && findRoom(held, level, { xMm: 0, yMm: 0, turnDeg: 0 }));
  expect(room).toContain(null);
});

test("beside a pot in the middle of a bare shelf there is room at once, however it is turned", () => {
  for (const ware of ["beaker", "mug", "bowl"]) {
    const middle = { ware, xMm: 0, yMm: 0, turnDeg: 0 };
    const bare: LoadPlan = {
      ...plan,
      levels: plan.levels.map((level) => ({ ...level, topMm: 41, placements: [middle] })).slice(0, 1),
    };
    const held = holdPiece(EIGHT_SIDED, bare, { ware });
    const asked = { count: 0 };
    const counting = held && {
      ...held,
      shortMm: (...question: Parameters<typeof held.shortMm>) => {
        asked.count += 1;
        return held.shortMm(...question);
      },
    };
    const found = counting && findRoom(counting, 0, { xMm: 0, yMm: 0, turnDeg: 0 });
    expect(found, ware).not.toBeNull();
    expect(asked.count).toBeLessThan(1000);
  }
});
