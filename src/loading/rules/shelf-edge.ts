import { mmText, tooLittle } from "../checker/broken.ts";
import type { PieceInPlace, Scene } from "../checker/scene.ts";
import { marginInsideMm } from "../solids/plan-distance.ts";
import { widestMm } from "../solids/upright.ts";
import { pieceRule } from "./rule.ts";

/** No part of a piece, cookie, handle and spout included, passes the edge of the shelf it stands on. */
export const shelfEdge = pieceRule({
  name: "shelfEdge",
  reason:
    "What overhangs is knocked while the kiln is loaded, sits close to the elements and drips past the shelf. Common practice, no source.",
  setting: null,
  defaultMm: 0,
  findForPiece: (scene, piece) => {
    const found = edgeMarginMm(scene, piece);
    if (!tooLittle(found, 0)) return [];
    const shelf = scene.shelves[piece.level]!;
    return [
      {
        rule: "shelfEdge",
        level: piece.level,
        things: [piece.thing, shelf.name],
        foundMm: found,
        allowedMm: 0,
        message: `${piece.name} passes the edge of its shelf by ${mmText(-found, 0)}; no part of it may.`,
        places: [piece.place, shelf.place],
      },
    ];
  },
});

/** How far a piece stands inside the edge of its shelf, its widest part counted; below zero where it overhangs. */
export function edgeMarginMm(scene: Scene, piece: PieceInPlace): number {
  const { region } = scene.shelves[piece.level]!;
  let least = Number.POSITIVE_INFINITY;
  for (const part of piece.solid.parts) least = Math.min(least, marginInsideMm(part.core, widestMm(part), region));
  return least;
}
