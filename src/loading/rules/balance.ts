import { shelfMassKg } from "../../kiln/shelf-mass.ts";
import { radians } from "../../measures/angle.ts";
import { pieceMassKg } from "../../ware/mass.ts";
import { mmText, tooLittle } from "../checker/broken.ts";
import type { Scene, ShelfInPlace } from "../checker/scene.ts";
import { shelfMiddle } from "../solids/furniture-solids.ts";
import type { Rule } from "./rule.ts";

const NO_TRIANGLE_MM2 = 1;

/**
 * The middle of mass of a shelf and the ware on it lies inside the triangle of its three posts' axes. A piece's mass is
 * taken on its axis. The posts that stand on the shelf are left out: they stand above those beneath, which carry them.
 */
export const balance: Rule = {
  name: "balance",
  reason: "A shelf whose weight lies outside its three posts tips. Statics.",
  setting: null,
  defaultMm: 0,
  find: (scene) =>
    scene.shelves.flatMap((shelf) => {
      const posts = scene.posts.filter((post) => post.level === shelf.level);
      const [a, b, c] = posts;
      if (!a || !b || !c || posts.length > 3) return [];
      const { x, y } = middleOfMass(scene, shelf);
      const found = insideTriangleMm(x, y, a, b, c);
      if (found !== null && !tooLittle(found, 0)) return [];
      return [
        {
          rule: "balance",
          level: shelf.level,
          things: [shelf.name, ...posts.map((post) => post.name)],
          foundMm: found,
          allowedMm: 0,
          message:
            found === null
              ? `The three posts under level ${shelf.level + 1} stand in one line; the shelf tips.`
              : `The weight on level ${shelf.level + 1} lies ${mmText(-found, 0)} outside the triangle of its posts; the shelf tips.`,
          places: [shelf.place, ...posts.map((post) => post.place)],
        },
      ];
    }),
};

/** The middle of mass of a shelf and the ware on it. Millimetres. */
function middleOfMass(scene: Scene, shelf: ShelfInPlace): { x: number; y: number } {
  const level = scene.plan.levels[shelf.level]!;
  const own = shelfMiddle(shelf.kind);
  const cos = Math.cos(radians(level.turnDeg));
  const sin = Math.sin(radians(level.turnDeg));
  let mass = shelfMassKg(own.areaMm2, shelf.kind.thicknessMm);
  let x = mass * (level.xMm + own.x * cos - own.y * sin);
  let y = mass * (level.yMm + own.x * sin + own.y * cos);
  for (const piece of scene.pieces) {
    if (piece.level !== shelf.level) continue;
    const kg = pieceMassKg(piece.ware);
    mass += kg;
    x += kg * piece.x;
    y += kg * piece.y;
  }
  return { x: x / mass, y: y / mass };
}

interface Axis {
  readonly x: number;
  readonly y: number;
}

/** How far a point lies inside a triangle; below zero outside; null where the three axes make no triangle. */
function insideTriangleMm(x: number, y: number, a: Axis, b: Axis, c: Axis): number | null {
  const twiceArea = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  if (Math.abs(twiceArea) < 2 * NO_TRIANGLE_MM2) return null;
  const within = (from: Axis, to: Axis): number =>
    (Math.sign(twiceArea) * ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x))) /
    Math.hypot(to.x - from.x, to.y - from.y);
  return Math.min(within(a, b), within(b, c), within(c, a));
}
