import type { Level, LoadPlanFile, Placement } from "../../loading/load-plan.ts";
import { BadInput } from "../../measures/bad-input.ts";
import type { LoadRecord, Pin } from "../records/load-record.ts";

/** A place in a plan: which level, which of its placements. */
export type Place = Pin;

/** A piece that went from one place of the plan as it was to one of the plan as it is to be. */
export interface Move {
  readonly from: Place;
  readonly to: Place;
}

/** Where each place of the plan as it was is in the new one; null where the piece stands elsewhere or not at all. */
export type Following = (place: Place) => Place | null;

/** Nearer than this is the same: it is past what anyone can set down, and covers a number written shorter. */
const SAME_MM = 0.01;
const SAME_DEG = 0.01;

export const placementAt = (plan: LoadPlanFile | null, { level, placement }: Place): Placement | undefined =>
  plan?.levels[level]?.placements[placement];

/** Where in a plan a piece stands of which only the spot is known: its shelf's top and its axis. */
export function placeAtSpot(
  plan: LoadPlanFile | null,
  ware: string | undefined,
  { topMm, xMm, yMm }: { readonly topMm: number; readonly xMm: number; readonly yMm: number },
): Place | null {
  for (const [level, { topMm: top, placements }] of plan?.levels.entries() ?? []) {
    if (!near(top, topMm)) continue;
    const placement = placements.findIndex(
      (each) => (ware === undefined || each.ware === ware) && near(each.xMm, xMm) && near(each.yMm, yMm),
    );
    if (placement >= 0) return { level, placement };
  }
  return null;
}

export const placeKey = ({ level, placement }: Place): string => `${level}.${placement}`;

/**
 * Follows pieces from one plan into another: by the moves that are told, else to where the same kind of piece stands in
 * the same spot on a shelf that has not moved. Whatever number the level or placement has now, what stands there stands
 * there still.
 *
 * @throws BadInput for a move from or to a place that is not there, or between two kinds of piece
 */
export function followPieces(
  before: LoadPlanFile | null,
  after: LoadPlanFile | null,
  moves: readonly Move[] = [],
): Following {
  const told = new Map<string, Place>();
  const arrivals = new Set<string>();
  moves.forEach(({ from, to }, i) => {
    const [left, arrived] = [placementAt(before, from), placementAt(after, to)];
    if (left === undefined || left.ware !== arrived?.ware) throw noSuchMove(i, left, arrived);
    told.set(placeKey(from), to);
    arrivals.add(placeKey(to));
  });
  const still = new Map<string, Place>();
  before?.levels.forEach((level, i) => {
    const newLevel = after?.levels.findIndex((each) => isSameShelf(each, level)) ?? -1;
    const there = after?.levels[newLevel]?.placements ?? [];
    level.placements.forEach((piece, j) => {
      const place = { level: newLevel, placement: there.findIndex((each) => isSameSpot(each, piece)) };
      if (place.placement >= 0 && !arrivals.has(placeKey(place)))
        still.set(placeKey({ level: i, placement: j }), place);
    });
  });
  return (place) => told.get(placeKey(place)) ?? still.get(placeKey(place)) ?? null;
}

/** A load's pins, ticks and ticks taken back, carried into another plan; those whose piece cannot be followed go. */
export function carried(load: LoadRecord, follow: Following): Pick<LoadRecord, "pins" | "ticks" | "takenBack"> {
  const all = <Kept extends Place>(places: readonly Kept[]): Kept[] =>
    places.flatMap((place) => {
      const to = follow(place);
      return to === null ? [] : [{ ...place, ...to }];
    });
  const takenBack = all(load.takenBack ?? []);
  return { pins: all(load.pins), ticks: all(load.ticks), ...(load.takenBack ? { takenBack } : {}) };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_MM;

function sameTurn(a: number, b: number): boolean {
  const apart = (((a - b) % 360) + 360) % 360;
  return Math.min(apart, 360 - apart) <= SAME_DEG;
}

const isSameShelf = (a: Level, b: Level): boolean =>
  a.shelf === b.shelf &&
  near(a.topMm, b.topMm) &&
  near(a.xMm, b.xMm) &&
  near(a.yMm, b.yMm) &&
  sameTurn(a.turnDeg, b.turnDeg);

const isSameSpot = (a: Placement, b: Placement): boolean =>
  a.ware === b.ware && near(a.xMm, b.xMm) && near(a.yMm, b.yMm) && sameTurn(a.turnDeg, b.turnDeg);

const noSuchMove = (i: number, left: Placement | undefined, arrived: Placement | undefined): BadInput =>
  new BadInput({
    code: "unknown-place",
    path: `moves[${i}]`,
    found: `${left?.ware ?? "no piece"} that becomes ${arrived?.ware ?? "no piece"}`,
    expected: "one piece: a place of the plan as it was, and its place in the new one",
  });
