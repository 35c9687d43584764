import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { SpyholeMouth } from "../../kiln/wall-fittings.ts";
import { uprightDisc } from "../testing/convex-solid.ts";
import { distanceBetween } from "../testing/gjk-distance.ts";
import { anyForm, anyStand, between, convexAt, solidAt } from "../testing/random-solids.ts";
import { mouthDistanceMm } from "./mouth-distance.ts";

const GENERAL_METHOD_MM = 1e-4;

const anyMouth: fc.Arbitrary<SpyholeMouth> = fc
  .record({
    x: between(-200, 200),
    y: between(-200, 200),
    heightMm: between(0, 200),
    radiusMm: between(2, 30),
    angle: between(0, 7),
  })
  .map(({ angle, ...mouth }) => ({ ...mouth, nx: Math.cos(angle), ny: Math.sin(angle) }));
const anyWare = anyForm.filter((form) => form.kind !== "line");

describe("the distance from a solid to a spyhole's mouth", () => {
  test("agrees with the general method of Gilbert, Johnson and Keerthi", () => {
    let worst = 0;
    fc.assert(
      fc.property(anyWare, anyStand, anyMouth, (form, stand, mouth) => {
        const found = mouthDistanceMm(solidAt(form, stand), mouth);
        const disc = uprightDisc(mouth.x, mouth.y, mouth.heightMm, mouth.radiusMm, mouth.nx, mouth.ny);
        let general = Number.POSITIVE_INFINITY;
        for (const part of convexAt(form, stand)) general = Math.min(general, distanceBetween(part, disc));
        worst = Math.max(worst, Math.abs(found - general));
        expect(Math.abs(found - general)).toBeLessThan(GENERAL_METHOD_MM);
      }),
      { numRuns: 1000 },
    );
    console.log(`mouths: worst difference from the general method ${worst.toExponential(1)} mm over 1000 pairs`);
  });

  test("is never more than to any point of the mouth, and is reached by one of them", () => {
    fc.assert(
      fc.property(anyWare, anyStand, anyMouth, (form, stand, mouth) => {
        const solid = solidAt(form, stand);
        const found = mouthDistanceMm(solid, mouth);
        const dot = 0.001;
        let nearest = Number.POSITIVE_INFINITY;
        for (let ring = 0; ring <= 8; ring++) {
          for (let i = 0; i < 24; i++) {
            const across = (mouth.radiusMm * ring * Math.cos((i * Math.PI) / 12)) / 8;
            const up = (mouth.radiusMm * ring * Math.sin((i * Math.PI) / 12)) / 8;
            const at = {
              x: mouth.x - mouth.ny * across,
              y: mouth.y + mouth.nx * across,
              heightMm: mouth.heightMm + up,
            };
            nearest = Math.min(nearest, mouthDistanceMm(solid, { ...mouth, ...at, radiusMm: dot }));
          }
        }
        expect(nearest).toBeGreaterThan(found - 2 * dot);
        expect(nearest).toBeLessThan(found + mouth.radiusMm * 0.3);
      }),
      { numRuns: 60 },
    );
  });
});
