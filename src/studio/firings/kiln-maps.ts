import type { FaultName, Grade } from "../records/faults.ts";
import type { FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import { levelHeats } from "./level-heat.ts";
import { type PiecePlace, piecePlace } from "./piece-place.ts";

/** Where in the kiln: by height, and by middle or quarter of the shelf. */
export const HEIGHTS = ["bottom", "middle", "top"] as const;
export type Height = (typeof HEIGHTS)[number];

/** What became of pieces at one place, of one glaze, or of one form. */
export interface Tally {
  readonly pieces: number;
  readonly good: number;
  readonly second: number;
  readonly lost: number;
  /** Each fault seen and how often, the commonest first. */
  readonly faults: readonly (readonly [FaultName, number])[];
  /** Share of pieces that were second or lost, 0 to 1. */
  readonly badShare: number;
}

/** One place of the kiln's map. */
export interface PlaceTally extends Tally {
  readonly height: Height;
  /** The middle of the shelf, or a quarter around it, by the angle it is centred on. */
  readonly part: "middle" | "0°" | "90°" | "180°" | "270°";
}

/** How hot a height runs. */
export interface HeightHeat {
  readonly height: Height;
  /** Mean over the cone that was wanted, °C, by witness cones alone; null where none told. */
  readonly overC: number | null;
  /** As it was foretold, °C. */
  readonly foretoldOverC: number | null;
  /** How many shelves the cones told of. */
  readonly shelves: number;
}

/** A kiln's maps over some of its firings. */
export interface KilnMaps {
  readonly firings: number;
  readonly all: Tally;
  readonly places: readonly PlaceTally[];
  readonly heat: readonly HeightHeat[];
  readonly byGlaze: readonly ({ readonly glaze: string } & Tally)[];
  readonly byForm: readonly ({ readonly form: string } & Tally)[];
}

interface Judged {
  readonly place: PiecePlace;
  readonly grade: Grade;
  readonly faults: readonly FaultName[];
}

/**
 * Where losses happen and where it runs hot, over the firings of one kiln; per glaze and per form too. Only pieces that
 * were judged count.
 *
 * @param loads the firings' loads, in any order
 */
export function kilnMaps(firings: readonly FiringRecord[], loads: readonly LoadRecord[]): KilnMaps {
  const byId = new Map(loads.map((load) => [load.id, load]));
  const judged: Judged[] = [];
  const heats: { height: Height; overC: number; from: "cones" | "foretold" }[] = [];
  let counted = 0;
  for (const firing of firings) {
    const load = firing.loadId === null ? undefined : byId.get(firing.loadId);
    if (!load?.plan) continue;
    counted += 1;
    for (const { level, placement, grade, faults } of firing.outcomes ?? []) {
      const place = piecePlace(load, { level, placement });
      if (place) judged.push({ place, grade, faults });
    }
    const depthMm = load.request.kiln.chamber.depthMm;
    // What was foretold stands beside what was seen, so both are asked.
    const { cones: _, ...untold } = firing;
    for (const each of [...levelHeats(firing), ...levelHeats(untold)]) {
      const topMm = load.plan.levels[each.level]?.topMm;
      if (topMm === undefined || each.overC === null || each.bound !== "about") continue;
      heats.push({ height: heightOf(topMm / depthMm), overC: each.overC, from: each.from });
    }
  }
  return {
    firings: counted,
    all: tally(judged),
    places: HEIGHTS.flatMap((height) =>
      PARTS.map((part) => ({
        ...{ height, part },
        ...tally(judged.filter(({ place }) => heightOf(place.heightShare) === height && partOf(place) === part)),
      })),
    ),
    heat: HEIGHTS.map((height) => heatAt(height, heats)),
    byGlaze: grouped(judged, ({ place }) => place.ware.glaze || "no glaze").map(([glaze, each]) => ({
      ...{ glaze },
      ...each,
    })),
    byForm: grouped(judged, ({ place }) => place.ware.form ?? "other").map(([form, each]) => ({ form, ...each })),
  };
}

const PARTS = ["middle", "0°", "90°", "180°", "270°"] as const;
/** Within this share of the way from the axis to the wall a piece stands in the middle. */
const MIDDLE = 0.45;

const heightOf = (share: number): Height => (share < 1 / 3 ? "bottom" : share < 2 / 3 ? "middle" : "top");

function partOf({ axisMm, wallMm, ware, angleDeg }: PiecePlace): PlaceTally["part"] {
  const toWallMm = axisMm + wallMm + ware.diameterMm / 2;
  if (axisMm < MIDDLE * toWallMm) return "middle";
  return PARTS[1 + (Math.round(angleDeg / 90) % 4)] ?? "middle";
}

function heatAt(
  height: Height,
  heats: readonly { height: Height; overC: number; from: "cones" | "foretold" }[],
): HeightHeat {
  const mean = (from: "cones" | "foretold") => {
    const these = heats.filter((each) => each.height === height && each.from === from);
    const sum = these.reduce((total, { overC }) => total + overC, 0);
    return { count: these.length, overC: these.length === 0 ? null : sum / these.length };
  };
  const seen = mean("cones");
  return { height, overC: seen.overC, foretoldOverC: mean("foretold").overC, shelves: seen.count };
}

function grouped(judged: readonly Judged[], nameOf: (each: Judged) => string): [string, Tally][] {
  const groups = new Map<string, Judged[]>();
  for (const each of judged) groups.set(nameOf(each), [...(groups.get(nameOf(each)) ?? []), each]);
  return [...groups]
    .map(([name, these]): [string, Tally] => [name, tally(these)])
    .sort(([a, one], [b, other]) => other.pieces - one.pieces || (a < b ? -1 : 1));
}

function tally(judged: readonly Judged[]): Tally {
  const many = (grade: Grade): number => judged.filter((each) => each.grade === grade).length;
  const faults = new Map<FaultName, number>();
  for (const each of judged) for (const fault of each.faults) faults.set(fault, (faults.get(fault) ?? 0) + 1);
  const [second, lost] = [many("second"), many("lost")];
  return {
    ...{ pieces: judged.length, good: many("good"), second, lost },
    faults: [...faults].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)),
    badShare: judged.length === 0 ? 0 : (second + lost) / judged.length,
  };
}
