/** A cone as it is drawn: its outline and its middle line, in a box of its own; the foot is at 0, 0 and up is negative. */
export interface ConeShape {
  /** An SVG path of the whole cone. */
  readonly outline: string;
  /** Where the tip is. */
  readonly tip: readonly [number, number];
}

const HEIGHT = 46;
const FOOT_WIDTH = 13;
const TIP_WIDTH = 3.4;
const PIECES = 14;
const UPRIGHT_DEG = 8;

/**
 * A cone bent so far. It bends in an arc, its thin end most, as a rod does that softens and falls under its own weight.
 *
 * @param bendDeg of its tip from upright: 8 as it was set, 90 down
 */
export function coneShape(bendDeg: number): ConeShape {
  const bend = Math.max(UPRIGHT_DEG, Math.min(90, bendDeg));
  const left: [number, number][] = [];
  const right: [number, number][] = [];
  let [x, y] = [0, 0];
  let tip: [number, number] = [0, 0];
  // The tip points further than the whole: down, it lies on the plaque, its tip below the level of its arc.
  const most = bend >= 90 ? 168 : UPRIGHT_DEG + (bend - UPRIGHT_DEG) * 1.75;
  for (let i = 0; i <= PIECES; i++) {
    const share = i / PIECES;
    const lean = UPRIGHT_DEG + (most - UPRIGHT_DEG) * share ** 1.15;
    const radians = (lean * Math.PI) / 180;
    const half = (FOOT_WIDTH + (TIP_WIDTH - FOOT_WIDTH) * share) / 2;
    left.push([x - half * Math.cos(radians), y - half * Math.sin(radians)]);
    right.push([x + half * Math.cos(radians), y + half * Math.sin(radians)]);
    tip = [x, y];
    x += (HEIGHT / PIECES) * Math.sin(radians);
    y -= (HEIGHT / PIECES) * Math.cos(radians);
  }
  const points = [...left, ...right.reverse()].map(([px, py]) => `${px.toFixed(1)} ${Math.min(0, py).toFixed(1)}`);
  return { outline: `M${points.join("L")}Z`, tip };
}

/** Room for the tallest and the widest of them. */
export const CONE_BOX = { left: -16, top: -50, width: 48, height: 54 } as const;
