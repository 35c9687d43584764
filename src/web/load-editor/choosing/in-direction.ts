/** Something that stands somewhere on a level. */
export interface StandsAt {
  readonly x: number;
  readonly y: number;
}

export type Direction = "left" | "right" | "up" | "down";

/** Off to the side counts so much more than straight ahead. */
const ASIDE_WEIGHS = 2.2;

/**
 * The piece an arrow key goes to. Right and left go on and back in the order of the numbers, which run like lines of text,
 * so that every piece can be reached; up and down go as eyes would: near, and not far off to the side.
 *
 * @param inOrder the pieces of a level in the order of their numbers
 * @returns null where there is none that way
 */
export function nextByArrow<Thing extends StandsAt>(
  inOrder: readonly Thing[],
  from: Thing,
  direction: Direction,
): Thing | null {
  if (direction === "right") return inOrder[inOrder.indexOf(from) + 1] ?? null;
  if (direction === "left") return inOrder[inOrder.indexOf(from) - 1] ?? null;
  // Up is the far side, as it is drawn.
  const sign = direction === "up" ? 1 : -1;
  let best: Thing | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const thing of inOrder) {
    const ahead = (thing.y - from.y) * sign;
    if (thing === from || ahead <= 1e-6) continue;
    const cost = ahead + ASIDE_WEIGHS * Math.abs(thing.x - from.x);
    if (cost < bestCost) [best, bestCost] = [thing, cost];
  }
  return best;
}
