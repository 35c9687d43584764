// A large cone stands about 64 mm tall on a foot 13 mm wide, and leans 8° as it is set (src/firing/heat-work/bend.ts). The
// foot is drawn a little wider than that, to be seen. Lengths in the drawing's own units, the plaque at y = 0, y up.

export const CONE_TALL = 64;
const FOOT = 15;
const TIP = 2.5;
const POINTS = 16;
/** A cone that stands is drawn as it was set, never bolt upright. */
const LEAN_DEG = 8;

type Point = readonly [x: number, y: number];

/**
 * A cone bent so far, as an outline: an arc whose tip has turned twice as far as the line from its foot to its tip leans.
 *
 * @param bendDeg 0 standing, 90 with its tip on the plaque
 */
export function coneOutline(bendDeg: number): Point[] {
  const turn = (2 * Math.max(LEAN_DEG, Math.min(90, bendDeg)) * Math.PI) / 180;
  const left: Point[] = [];
  const right: Point[] = [];
  for (let i = 0; i <= POINTS; i++) {
    const share = i / POINTS;
    const [x, y] = along(share, turn);
    const half = (FOOT + (TIP - FOOT) * share) / 2;
    const angle = turn * share;
    // Across the cone: at right angles to where it runs.
    left.push([x - half * Math.cos(angle), y + half * Math.sin(angle)]);
    right.push([x + half * Math.cos(angle), y - half * Math.sin(angle)]);
  }
  return [...left, ...right.reverse()];
}

/** Where its tip is. */
export const coneTip = (bendDeg: number): Point =>
  along(1, (2 * Math.max(LEAN_DEG, Math.min(90, bendDeg)) * Math.PI) / 180);

/** A place along the middle of an arc that begins upright and turns by `turn` over its length. */
function along(share: number, turn: number): Point {
  const radius = CONE_TALL / turn;
  return [radius * (1 - Math.cos(turn * share)), radius * Math.sin(turn * share)];
}

/** How far a cone is bent whose tip a finger has drawn there from its foot: 0 above it, 90 level with it. */
export function bendOfTip(x: number, y: number): number {
  const degrees = (Math.atan2(Math.max(0, x), Math.max(0, y)) * 180) / Math.PI;
  return x <= 0 && y <= 0 ? 0 : Math.min(90, Math.max(0, degrees));
}

/** To the nearest five degrees: nobody reads a cone more finely by eye. */
export const readable = (degrees: number): number => Math.round(degrees / 5) * 5;
