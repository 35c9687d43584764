import { type Broken, mmText, type Place, sentenceCase, standsFrom, tooLittle } from "../checker/broken.ts";
import type { Scene } from "../checker/scene.ts";
import { GLAZE_WARE_RULES } from "../clearance-rules.ts";
import { type Solid, solidDistanceMm } from "../solids/upright.ts";
import type { PieceRule } from "./rule.ts";

/** Ware, shelves and posts to the whole length of every probe. */
export const probe: PieceRule = {
  name: "probeMm",
  reason:
    "A probe with something close beside it reads that thing and not the chamber, and what leans on it breaks it: two inches all round. Common practice, no source.",
  setting: "probeMm",
  defaultMm: GLAZE_WARE_RULES.probeMm,
  findForPiece: (scene, piece) => tooNearProbes(scene, piece, piece.thing),
  find: (scene) => [
    ...scene.pieces.flatMap((piece) => tooNearProbes(scene, piece, piece.thing)),
    ...[...scene.shelves, ...scene.posts].flatMap((thing) => tooNearProbes(scene, thing, thing.name)),
  ],
};

interface Near {
  readonly level: number;
  readonly solid: Solid;
  readonly name: string;
  readonly place: Place;
}

function tooNearProbes(scene: Scene, near: Near, thing: string): Broken[] {
  const least = scene.rules.probeMm;
  return scene.probes.flatMap(({ name, solid, place }) => {
    const found = solidDistanceMm(near.solid, solid, least);
    if (!tooLittle(found, least)) return [];
    const subject = near.place.kind === "piece" ? near.name : sentenceCase(near.name);
    return [
      {
        rule: "probeMm",
        level: near.level,
        things: [thing, name],
        foundMm: found,
        allowedMm: least,
        message: `${subject} ${standsFrom(found, name, least)}; ${mmText(least)} is the least.`,
        places: [near.place, place],
      },
    ];
  });
}
