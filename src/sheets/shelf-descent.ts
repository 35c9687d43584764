import { placedRegion } from "../kiln/convex-region.ts";
import { probeLine } from "../kiln/wall-fittings.ts";
import { marginInsideMm, planDistanceMm } from "../loading/solids/plan-distance.ts";
import { lineShape, type PlanShape } from "../loading/solids/plan-shape.ts";
import { type Upright, widestMm } from "../loading/solids/upright.ts";
import { radians } from "../measures/angle.ts";
import type { SheetLevel, SheetLoad } from "./sheet-load.ts";

/** How a shelf gets down to its posts past the probes. */
export type ShelfDescent =
  | { readonly way: "straight" }
  /** Level, but held to one side while it passes. */
  | { readonly way: "aside"; readonly byMm: number; readonly towardDeg: number; readonly past: readonly string[] }
  /** Level it would meet a probe: it has to be tilted. */
  | { readonly way: "tilted"; readonly past: readonly string[] };

/** Room a hand-held shelf needs beside a probe or the wall to pass without touching. Common practice, no source. */
const PLAY_MM = 3;
/** So that exactly the play is enough in spite of rounding. */
const ROUNDING_MM = 1e-6;
/** How far aside to try: a hand's measure first, a hair's only where there is no more room. */
const ASIDE_MM = [5, 10, 15, 20, 30, 40, 50, 4, 3, 2, 1];
const DIRECTIONS_DEG = Array.from({ length: 24 }, (_, i) => i * 15);

/**
 * Whether a shelf can go straight down, level: its outline, seen from above, must stay clear of every probe it passes
 * by a few millimetres, in its own place or held a little to one side with as much room to the wall. Only probes above
 * the shelf's place are passed. Turning the shelf on the way down is not tried, nor whether a tilt succeeds.
 */
export function shelfDescent(load: SheetLoad, level: SheetLevel): ShelfDescent {
  const { chamber, probes } = load.request.kiln;
  const passed = probes.filter((probe) => probe.heightMm > level.shelf.undersideMm);
  const lines = passed.map((probe) => {
    const { wallX, wallY, tipX, tipY } = probeLine(chamber, probe);
    return lineShape(tipX, tipY, wallX, wallY);
  });
  const shelf = level.shelf.solid.parts[0] as Upright;
  const probeRoom = (x: number, y: number): number =>
    Math.min(Number.POSITIVE_INFINITY, ...lines.map((line) => shelfDistance(shelf, line, x, y)));
  if (probeRoom(0, 0) >= PLAY_MM - ROUNDING_MM) return { way: "straight" };

  const past = passed
    .filter((_, i) => shelfDistance(shelf, lines[i] as PlanShape, 0, 0) < PLAY_MM - ROUNDING_MM)
    .map(({ name }) => name);
  for (const byMm of ASIDE_MM) {
    const places = DIRECTIONS_DEG.map((towardDeg) => {
      const x = byMm * Math.cos(radians(towardDeg));
      const y = byMm * Math.sin(radians(towardDeg));
      return { towardDeg, wall: wallRoom(shelf, load, x, y), probe: probeRoom(x, y) };
    }).filter(({ wall, probe }) => wall >= PLAY_MM - ROUNDING_MM && probe >= PLAY_MM - ROUNDING_MM);
    if (places.length === 0) continue;
    const { towardDeg } = places.reduce((a, b) => (b.probe > a.probe + 1e-9 ? b : a));
    return { way: "aside", byMm, towardDeg, past };
  }
  return { way: "tilted", past };
}

// A shelf moved by (x, y) is as far from a line as the shelf is from the line moved the other way.
function shelfDistance(shelf: Upright, line: PlanShape, x: number, y: number): number {
  const moved: PlanShape = { ...line, corners: line.corners.map(([px, py]) => [px - x, py - y] as const) };
  return planDistanceMm(shelf.core, moved) - widestMm(shelf);
}

const wallRoom = (shelf: Upright, load: SheetLoad, x: number, y: number): number =>
  marginInsideMm(shelf.core, widestMm(shelf), placedRegion(load.scene.chamber, -x, -y, 0));
