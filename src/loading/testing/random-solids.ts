import fc from "fast-check";
import { placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { postPrism, regionPrism } from "../solids/furniture-solids.ts";
import { lineShape, pointShape } from "../solids/plan-shape.ts";
import { prism, type Solid, solidOf, type Upright } from "../solids/upright.ts";
import { type Convex, prism as convexPrism, frustum, line, slab } from "./convex-solid.ts";

/** A solid described apart from where it stands, so that tests can build it in more than one way. Millimetres. */
export type Form =
  | { readonly kind: "body"; readonly rings: readonly (readonly [number, number])[] }
  | { readonly kind: "stadium"; readonly length: number; readonly radius: number; readonly height: number }
  | { readonly kind: "shelf"; readonly shelf: Shelf }
  | { readonly kind: "post"; readonly width: number; readonly round: boolean; readonly height: number }
  | { readonly kind: "line"; readonly length: number };

/** Where a form stands. Millimetres, degrees. */
export interface Stand {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly turnDeg: number;
}

/** To the thousandth: the general method divides by lengths and loses its way among numbers like 5e-324. */
export const between = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((thousandths) => thousandths / 1000);

const anyShelf: fc.Arbitrary<Shelf> = fc
  .oneof(
    fc.record({ shape: fc.constant("disc" as const), diameterMm: between(40, 120) }),
    fc.record({ shape: fc.constant("half-disc" as const), diameterMm: between(40, 120) }),
    fc.record({
      shape: fc.constant("polygon" as const),
      sides: fc.integer({ min: 3, max: 8 }),
      acrossFlatsMm: between(40, 100),
    }),
    fc.record({ shape: fc.constant("rectangle" as const), widthMm: between(30, 100), lengthMm: between(30, 100) }),
  )
  .chain((plan) => between(5, 25).map((thicknessMm): Shelf => ({ ...plan, thicknessMm, name: "shelf", count: 1 })));

const anyBody = fc
  .array(fc.tuple(between(0.1, 30), between(3, 50)), { minLength: 2, maxLength: 5 })
  .map((steps): Form => {
    let height = -steps[0]![0];
    const rings = steps.map(([up, out]) => {
      height += up;
      return [height, out] as const;
    });
    return { kind: "body", rings };
  });

/** A body, a stadium, a shelf, a post or a level line. */
export const anyForm: fc.Arbitrary<Form> = fc.oneof(
  anyBody,
  fc.record({
    kind: fc.constant("stadium" as const),
    length: between(0, 60),
    radius: between(3, 20),
    height: between(5, 80),
  }),
  fc.record({ kind: fc.constant("shelf" as const), shelf: anyShelf }),
  fc.record({
    kind: fc.constant("post" as const),
    width: between(10, 50),
    round: fc.boolean(),
    height: between(10, 80),
  }),
  fc.record({ kind: fc.constant("line" as const), length: between(5, 60) }),
);

export const anyStand: fc.Arbitrary<Stand> = fc.record({
  x: between(-120, 120),
  y: between(-120, 120),
  z: between(0, 120),
  turnDeg: between(-360, 360),
});

const cosine = (deg: number): number => Math.cos((deg * Math.PI) / 180);
const sine = (deg: number): number => Math.sin((deg * Math.PI) / 180);

/** The form as the checker's own solid. */
export function solidAt(form: Form, { x, y, z, turnDeg }: Stand): Solid {
  return solidOf(x, y, [uprightAt(form, { x, y, z, turnDeg })]);
}

function uprightAt(form: Form, { x, y, z, turnDeg }: Stand): Upright {
  switch (form.kind) {
    case "body":
      return { core: pointShape(x, y), rings: form.rings.map(([up, out]) => [z + up, out] as const) };
    case "stadium": {
      const farX = x + form.length * cosine(turnDeg);
      const farY = y + form.length * sine(turnDeg);
      return prism(lineShape(x, y, farX, farY), form.radius, z, z + form.height);
    }
    case "shelf":
      return regionPrism(placedRegion(shelfRegion(form.shelf), x, y, turnDeg), z, z + form.shelf.thicknessMm);
    case "post":
      return postPrism(
        { widthMm: form.width, shape: form.round ? "round" : "square" },
        x,
        y,
        turnDeg,
        z,
        z + form.height,
      );
    case "line": {
      const core = lineShape(x, y, x + form.length * cosine(turnDeg), y + form.length * sine(turnDeg));
      return { core, rings: [[z, 0]] };
    }
  }
}

/** The form as convex parts for the general distance method (gjk-distance.ts), built apart from the checker's solids. */
export function convexAt(form: Form, { x, y, z, turnDeg }: Stand): Convex[] {
  const farX = (length: number): number => x + length * cosine(turnDeg);
  const farY = (length: number): number => y + length * sine(turnDeg);
  switch (form.kind) {
    case "body":
      return form.rings
        .slice(1)
        .map(([up, out], i) => frustum(x, y, z + form.rings[i]![0], form.rings[i]![1], z + up, out));
    case "stadium": {
      const feet = [
        { x, y, radius: form.radius },
        { x: farX(form.length), y: farY(form.length), radius: form.radius },
      ];
      return [convexPrism(feet, z, z + form.height)];
    }
    case "shelf":
      return [slab(placedRegion(shelfRegion(form.shelf), x, y, turnDeg), z, z + form.shelf.thicknessMm)];
    case "post": {
      if (form.round) return [frustum(x, y, z, form.width / 2, z + form.height, form.width / 2)];
      const corner = form.width / Math.SQRT2;
      const feet = [45, 135, 225, 315].map((deg) => ({
        x: x + corner * cosine(turnDeg + deg),
        y: y + corner * sine(turnDeg + deg),
        radius: 0,
      }));
      return [convexPrism(feet, z, z + form.height)];
    }
    case "line":
      return [line([x, y, z], [farX(form.length), farY(form.length), z])];
  }
}
