import type { SpyholeMouth } from "../../kiln/wall-fittings.ts";
import { meridianDistanceMm, type Rings } from "./meridian.ts";
import { planDistanceMm } from "./plan-distance.ts";
import { lineShape } from "./plan-shape.ts";
import type { Solid, Upright } from "./upright.ts";

const SHRINK = (Math.sqrt(5) - 1) / 2;
const NARROW_ENOUGH_RAD = 1e-9;

/**
 * The distance in space between a solid and a spyhole's mouth, an upright disc of no thickness.
 *
 * The mouth is a stack of level lines, each as long as the disc is wide at its height. To each line the distance is
 * exact; over the lines, for a convex solid, it falls to one lowest value and rises again, so a golden-section search
 * (from memory: Kiefer, Sequential minimax search for a maximum, 1953) finds it to far below a thousandth of a
 * millimetre. A side that is not convex is taken one straight piece at a time.
 *
 * @param withinMm farther than this need not be told exactly: an answer above it may be less than the true distance
 * @returns millimetres, zero where they meet
 */
export function mouthDistanceMm(solid: Solid, mouth: SpyholeMouth, withinMm = Number.POSITIVE_INFINITY): number {
  const across = Math.max(0, Math.hypot(solid.x - mouth.x, solid.y - mouth.y) - solid.reachMm - mouth.radiusMm);
  const up = Math.max(0, solid.bottomMm - mouth.heightMm, mouth.heightMm - solid.topMm) - mouth.radiusMm;
  const atLeast = Math.hypot(across, Math.max(0, up));
  if (atLeast > withinMm) return atLeast;
  let nearest = Number.POSITIVE_INFINITY;
  for (const part of solid.parts) {
    for (let i = 0; i + 1 < part.rings.length; i++) {
      nearest = Math.min(nearest, lowestOver(part, [part.rings[i]!, part.rings[i + 1]!], mouth));
    }
  }
  return nearest;
}

function lowestOver(part: Upright, piece: Rings, mouth: SpyholeMouth): number {
  // `angle` runs from the mouth's lowest place (−90°) to its highest (+90°).
  const at = (angle: number): number => {
    const half = mouth.radiusMm * Math.cos(angle);
    const height = mouth.heightMm + mouth.radiusMm * Math.sin(angle);
    const line = lineShape(
      mouth.x - mouth.ny * half,
      mouth.y + mouth.nx * half,
      mouth.x + mouth.ny * half,
      mouth.y - mouth.nx * half,
    );
    return Math.max(0, meridianDistanceMm(planDistanceMm(part.core, line), piece, [[height, 0]]));
  };
  let low = -Math.PI / 2;
  let high = Math.PI / 2;
  let left = high - SHRINK * (high - low);
  let right = low + SHRINK * (high - low);
  let atLeft = at(left);
  let atRight = at(right);
  let best = Math.min(at(low), at(high), atLeft, atRight);
  while (high - low > NARROW_ENOUGH_RAD && best > 0) {
    if (atLeft < atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - SHRINK * (high - low);
      atLeft = at(left);
      best = Math.min(best, atLeft);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + SHRINK * (high - low);
      atRight = at(right);
      best = Math.min(best, atRight);
    }
  }
  return best;
}
