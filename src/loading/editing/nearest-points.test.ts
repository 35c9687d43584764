import fc from "fast-check";
import { expect, test } from "vitest";
import { clearancesIn } from "../checker/clearances.ts";
import { sceneOf } from "../checker/scene.ts";
import { anyPlan, EIGHT_SIDED } from "../testing/random-loads.ts";
import { nearestPoints } from "./nearest-points.ts";

// The clearances are the checker's, measured another way: the line drawn must be as long as what it is labelled with.
const STRAIGHT: ReadonlySet<string> = new Set(["beaker", "mug", "jug"]);

test("a dimension line is as long as the distance it shows, wherever both things stand straight on one level", () => {
  let drawn = 0;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const scene = sceneOf(EIGHT_SIDED, plan);
      for (const piece of scene.pieces) {
        if (!STRAIGHT.has(piece.ware.name)) continue;
        const others = scene.pieces.filter((each) => each !== piece);
        for (const near of clearancesIn(scene, piece, others)) {
          const { place, kind } = near;
          const flat =
            kind === "wall" ||
            kind === "shelf edge" ||
            (place.kind === "piece" &&
              place.level === piece.level &&
              STRAIGHT.has(plan.levels[place.level]?.placements[place.placement]?.ware ?? ""));
          if (!flat || near.distanceMm < 0.01) continue;
          const line = nearestPoints(scene, piece.solid, near);
          if (!line) throw new Error("no line");
          expect(Math.hypot(line.x2 - line.x1, line.y2 - line.y1)).toBeCloseTo(near.distanceMm, 6);
          drawn += 1;
        }
      }
    }),
    { numRuns: 60 },
  );
  expect(drawn).toBeGreaterThan(300);
});

test("seen from above a line is never longer than the distance in space", () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const scene = sceneOf(EIGHT_SIDED, plan);
      for (const piece of scene.pieces) {
        const others = scene.pieces.filter((each) => each !== piece);
        for (const near of clearancesIn(scene, piece, others)) {
          const line = nearestPoints(scene, piece.solid, near);
          if (near.kind === "lid" || near.kind === "shelf above") expect(line).toBeNull();
          if (!line || near.distanceMm < 0) continue;
          const length = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
          expect(length).toBeLessThanOrEqual(near.distanceMm + 1e-6);
        }
      }
    }),
    { numRuns: 60 },
  );
});
