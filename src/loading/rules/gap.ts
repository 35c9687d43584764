import { type Broken, mmText, type Place, standsFrom, tooLittle } from "../checker/broken.ts";
import type { PieceInPlace, Scene } from "../checker/scene.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { marginInsideMm } from "../solids/plan-distance.ts";
import { type Solid, solidDistanceMm, widestMm } from "../solids/upright.ts";
import { pieceRule } from "./rule.ts";

/**
 * Ware to ware on any level, to posts and to the chamber wall. The posts that carry a piece's own shelf are left out:
 * the shelf lies between.
 */
export const gap = pieceRule({
  name: "gapMm",
  reason:
    "Glaze swells and bubbles as it melts, and pots shrink and lean: closer than a quarter of an inch they may fuse to a neighbour, a post or the brick. Common practice, no source.",
  setting: "gapMm",
  defaultMm: GLAZE_WARE_RULES.gapMm,
  findForPiece: (scene, piece, others) => {
    const least = scene.rules.gapMm;
    const broken: Broken[] = [];
    for (const other of others) {
      const found = solidDistanceMm(piece.solid, other.solid, least);
      if (tooLittle(found, least)) broken.push(tooNear(piece, found, least, other.name, other.thing, other.place));
    }
    for (const post of scene.posts) {
      if (post.level === piece.level) continue;
      const found = solidDistanceMm(piece.solid, post.solid, least);
      if (tooLittle(found, least)) broken.push(tooNear(piece, found, least, post.name, post.name, post.place));
    }
    const toWall = wallDistanceMm(scene, piece.solid);
    if (tooLittle(toWall, least)) {
      broken.push(tooNear(piece, toWall, least, "the chamber wall", "chamber wall", { kind: "chamber" }));
    }
    return broken;
  },
});

function tooNear(piece: PieceInPlace, found: number, least: number, name: string, thing: string, place: Place): Broken {
  return {
    rule: "gapMm",
    level: piece.level,
    things: [piece.thing, thing],
    foundMm: found,
    allowedMm: least,
    message: `${piece.name} ${standsFrom(found, name, least)}; ${mmText(least)} is the least.`,
    places: [piece.place, place],
  };
}

/** From a solid to the chamber wall: the least over its parts at their widest. Below zero where it passes the wall. */
export function wallDistanceMm(scene: Scene, solid: Solid): number {
  let least = Number.POSITIVE_INFINITY;
  for (const part of solid.parts) least = Math.min(least, marginInsideMm(part.core, widestMm(part), scene.chamber));
  return least;
}
