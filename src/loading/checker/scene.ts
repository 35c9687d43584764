import { type ConvexRegion, chamberRegion, placedRegion, shelfRegion } from "../../kiln/convex-region.ts";
import type { Shelf } from "../../kiln/furniture.ts";
import { probeLine, type SpyholeMouth, spyholeMouth } from "../../kiln/wall-fittings.ts";
import { BadInput, shown } from "../../measures/bad-input.ts";
import type { Ware } from "../../ware/ware.ts";
import type { ClearanceRules } from "../clearance-rules.ts";
import type { Level, LoadPlan } from "../load-plan.ts";
import type { LoadRequest } from "../load-request.ts";
import { regionPrism } from "../solids/furniture-solids.ts";
import { lineShape } from "../solids/plan-shape.ts";
import { type Solid, solidOf } from "../solids/upright.ts";
import { wareSolid } from "../solids/ware-solid.ts";
import type { Place } from "./broken.ts";
import { type PostInPlace, postsInPlace } from "./posts-in-place.ts";

/** A shelf where the plan puts it. Millimetres above the floor. */
export interface ShelfInPlace {
  readonly level: number;
  readonly kind: Shelf;
  readonly region: ConvexRegion;
  readonly undersideMm: number;
  readonly topMm: number;
  readonly solid: Solid;
  readonly name: string;
  readonly place: Place;
}

/** A piece where the plan puts it. */
export interface PieceInPlace {
  readonly level: number;
  readonly placement: number;
  readonly ware: Ware;
  readonly x: number;
  readonly y: number;
  readonly solid: Solid;
  /** For a sentence: "espresso cup (level 2, piece 3)". */
  readonly name: string;
  /** For a list: "espresso cup 3 on level 2". */
  readonly thing: string;
  readonly place: Place;
}

export interface ProbeInPlace {
  readonly name: string;
  readonly solid: Solid;
  readonly place: Place;
}

export interface MouthInPlace {
  readonly name: string;
  readonly mouth: SpyholeMouth;
  readonly place: Place;
}

/** A plan set up in the chamber, ready to be measured. */
export interface Scene {
  readonly request: LoadRequest;
  readonly plan: LoadPlan;
  readonly rules: ClearanceRules;
  readonly chamber: ConvexRegion;
  readonly depthMm: number;
  /** One a level, in the plan's order. */
  readonly shelves: readonly ShelfInPlace[];
  readonly posts: readonly PostInPlace[];
  readonly pieces: readonly PieceInPlace[];
  readonly probes: readonly ProbeInPlace[];
  /** Mouths of the spyholes that are open while firing. */
  readonly mouths: readonly MouthInPlace[];
}

/**
 * Sets a plan up in its kiln.
 *
 * @throws BadInput where the plan names a shelf or a piece the request has not
 */
export function sceneOf(request: LoadRequest, plan: LoadPlan): Scene {
  const { chamber, probes, spyholes } = request.kiln;
  const shelves = plan.levels.map((level, index) => shelfInPlace(request, level, index));
  const wares = new Map(request.ware.map((ware) => [ware.name, ware]));
  return {
    request,
    plan,
    rules: request.rules,
    chamber: chamberRegion(chamber),
    depthMm: chamber.depthMm,
    shelves,
    posts: postsInPlace(request.furniture.posts, plan.levels, shelves),
    pieces: plan.levels.flatMap((level, index) => piecesInPlace(wares, level, index)),
    probes: probes.map((probe, index) => {
      const line = probeLine(chamber, probe);
      const core = lineShape(line.tipX, line.tipY, line.wallX, line.wallY);
      const solid = solidOf(line.tipX, line.tipY, [{ core, rings: [[line.heightMm, 0]] }]);
      return { name: `the probe "${probe.name}"`, solid, place: { kind: "probe", probe: index } };
    }),
    mouths: spyholes.flatMap((hole, index) =>
      hole.open
        ? [
            {
              name: `the open spyhole "${hole.name}"`,
              mouth: spyholeMouth(chamber, hole),
              place: { kind: "spyhole", spyhole: index } as const,
            },
          ]
        : [],
    ),
  };
}

function shelfInPlace(request: LoadRequest, level: Level, index: number): ShelfInPlace {
  const kind = request.furniture.shelves.find((shelf) => shelf.name === level.shelf);
  if (!kind) throw unknownName(`levels[${index}].shelf`, level.shelf, "a shelf of the request");
  const region = placedRegion(shelfRegion(kind), level.xMm, level.yMm, level.turnDeg);
  const undersideMm = level.topMm - kind.thicknessMm;
  return {
    level: index,
    kind,
    region,
    undersideMm,
    topMm: level.topMm,
    solid: solidOf(level.xMm, level.yMm, [regionPrism(region, undersideMm, level.topMm)]),
    name: `the shelf of level ${index + 1}`,
    place: { kind: "shelf", level: index },
  };
}

function piecesInPlace(wares: ReadonlyMap<string, Ware>, level: Level, index: number): PieceInPlace[] {
  return level.placements.map(({ ware: name, xMm, yMm, turnDeg }, placement) => {
    const ware = wares.get(name);
    if (!ware) throw unknownName(`levels[${index}].placements[${placement}].ware`, name, "a piece of the request");
    return {
      level: index,
      placement,
      ware,
      x: xMm,
      y: yMm,
      solid: wareSolid(ware, xMm, yMm, turnDeg, level.topMm),
      name: `${name} (level ${index + 1}, piece ${placement + 1})`,
      thing: `${name} ${placement + 1} on level ${index + 1}`,
      place: { kind: "piece", level: index, placement },
    };
  });
}

const unknownName = (path: string, name: string, expected: string): BadInput =>
  new BadInput({ code: "unknown-name", path, found: shown(name), expected });
