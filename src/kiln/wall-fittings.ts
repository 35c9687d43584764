import { radians } from "../measures/angle.ts";
import type { Chamber } from "./chamber.ts";
import { chamberRegion, edgeDistanceMm } from "./convex-region.ts";
import type { Probe, Spyhole } from "./kiln.ts";

/** A probe in space: a level line from the wall to its tip. */
export interface ProbeLine {
  readonly wallX: number;
  readonly wallY: number;
  readonly tipX: number;
  readonly tipY: number;
  readonly heightMm: number;
}

/** Where a probe runs: from the wall at its angle straight toward the axis. Millimetres. */
export function probeLine(chamber: Chamber, probe: Probe): ProbeLine {
  const wall = edgeDistanceMm(chamberRegion(chamber), probe.angleDeg);
  const dx = Math.cos(radians(probe.angleDeg));
  const dy = Math.sin(radians(probe.angleDeg));
  const tip = wall - probe.reachMm;
  return { wallX: wall * dx, wallY: wall * dy, tipX: tip * dx, tipY: tip * dy, heightMm: probe.heightMm };
}

/** A spyhole's mouth in space: an upright disc lying in the wall. */
export interface SpyholeMouth {
  readonly x: number;
  readonly y: number;
  readonly heightMm: number;
  readonly radiusMm: number;
  /** The wall's outward direction there; the mouth's disc is square to it. */
  readonly nx: number;
  readonly ny: number;
}

/** Where a spyhole opens into the chamber. Millimetres. */
export function spyholeMouth(chamber: Chamber, spyhole: Spyhole): SpyholeMouth {
  const region = chamberRegion(chamber);
  const wall = edgeDistanceMm(region, spyhole.angleDeg);
  const dx = Math.cos(radians(spyhole.angleDeg));
  const dy = Math.sin(radians(spyhole.angleDeg));
  let nx = dx;
  let ny = dy;
  let closest = Number.POSITIVE_INFINITY;
  for (const side of region.sides) {
    const gap = Math.abs(side.offset - wall * (side.nx * dx + side.ny * dy));
    if (gap < closest - 1e-9) {
      closest = gap;
      nx = side.nx;
      ny = side.ny;
    }
  }
  return { x: wall * dx, y: wall * dy, heightMm: spyhole.heightMm, radiusMm: spyhole.diameterMm / 2, nx, ny };
}
