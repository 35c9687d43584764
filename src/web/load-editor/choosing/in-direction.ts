/** Something that stands somewhere on a level. */
export interface StandsAt {
  readonly x: number;
  readonly y: number;
}

export type Direction = "left" | "right" | "up" | "down";

const AHEAD: Readonly<Record<Direction, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  // Up is the far side, as it is drawn.
  up: [0, 1],
  down: [0, -1],
};

/** Off to the side counts so much more than straight ahead. */
const ASIDE_WEIGHS = 2.2;

/**
 * The thing next in a direction, as eyes would go on: near, and not far off to the side.
 *
 * @returns null where nothing stands in that direction
 */
export function nextInDirection<Thing extends StandsAt>(
  things: readonly Thing[],
  from: StandsAt,
  direction: Direction,
): Thing | null {
  const [aheadX, aheadY] = AHEAD[direction];
  let best: Thing | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const thing of things) {
    const [dx, dy] = [thing.x - from.x, thing.y - from.y];
    const ahead = dx * aheadX + dy * aheadY;
    if (thing === from || ahead <= 1e-6) continue;
    const cost = ahead + ASIDE_WEIGHS * Math.abs(dx * aheadY - dy * aheadX);
    if (cost < bestCost) [best, bestCost] = [thing, cost];
  }
  return best;
}
