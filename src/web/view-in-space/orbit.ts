import { radians } from "../../measures/angle.ts";

/** Where the eye stands about the kiln. */
export interface Orbit {
  /** Seen from above, counter-clockwise from the front of the kiln. */
  readonly turnDeg: number;
  /** Above the level. */
  readonly tiltDeg: number;
  /** 1 shows the whole kiln; 2 stands half as far away. */
  readonly nearness: number;
}

export const FIRST_LOOK: Orbit = { turnDeg: -28, tiltDeg: 26, nearness: 1.1 };

const LOWEST_DEG = -10;
const HIGHEST_DEG = 88;
// From above, the near edge of the floor lies lowest in the picture: looking a little under the middle brings it in.
const LOOKED_AT = 0.45;
const FARTHEST = 0.6;
const NEAREST = 5;

/** The eye moved about the kiln, never under its floor nor over its top and down the other side. */
export const turned = (orbit: Orbit, turnDeg: number, tiltDeg: number): Orbit => ({
  ...orbit,
  turnDeg: ((((orbit.turnDeg + turnDeg + 180) % 360) + 360) % 360) - 180,
  tiltDeg: Math.min(HIGHEST_DEG, Math.max(LOWEST_DEG, orbit.tiltDeg + tiltDeg)),
});

/** The eye moved nearer (share above 1) or farther. */
export const nearer = (orbit: Orbit, share: number): Orbit => ({
  ...orbit,
  nearness: Math.min(NEAREST, Math.max(FARTHEST, orbit.nearness * share)),
});

/** What is to be seen: a standing cylinder about the kiln's axis, from the floor up. */
export interface Sight {
  readonly reachMm: number;
  readonly heightMm: number;
  /** The picture's width over its height. */
  readonly aspect: number;
  /** How much the picture takes in from bottom to top. */
  readonly openingDeg: number;
}

/**
 * Where the eye stands, in the renderer's axes (y up, z toward the potter), so that at nearness 1 the whole sight fits
 * the picture however it is turned. It looks at the kiln's axis, a little under its middle.
 */
export function eyeAt(orbit: Orbit, sight: Sight): { x: number; y: number; z: number; targetY: number } {
  const targetY = sight.heightMm * LOOKED_AT;
  const radius = Math.hypot(sight.reachMm, sight.heightMm - targetY);
  const upDown = radians(sight.openingDeg) / 2;
  const across = Math.atan(Math.tan(upDown) * sight.aspect);
  const away = radius / Math.sin(Math.min(upDown, across)) / orbit.nearness;
  const flat = away * Math.cos(radians(orbit.tiltDeg));
  return {
    x: flat * Math.sin(radians(orbit.turnDeg)),
    y: targetY + away * Math.sin(radians(orbit.tiltDeg)),
    z: flat * Math.cos(radians(orbit.turnDeg)),
    targetY,
  };
}
