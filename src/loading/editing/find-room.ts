import type { Spot } from "./edit-pieces.ts";
import type { HeldPiece } from "./live-answer.ts";

/** How a piece may be turned while room is looked for: as it is held, then away from that either way. */
const TURNS_DEG = [0, 30, -30, 60, -60, 90, -90, 120, -120, 150, -150, 180];
/** A light snap while she drags looks no farther than this, and keeps the turn she chose. */
const LIGHT_MM = 20;
/** Places asked about at most: while she drags, for the turn it is held at, and for each other one. */
const MOST_ASKED_LIGHTLY = 300;
const MOST_ASKED = 6000;
const MOST_ASKED_TURNED = 800;
/** Gaps with less play than this are not looked into; a well packed level has them with hardly more. */
const FINEST_MM = 0.002;
const CLOSER_STEPS = 10;

/**
 * The nearest place to a wished one where a held piece breaks no rule: with the turn it is held at where there is any,
 * else with another. Where there is any it is found, unless the level is so full of small gaps that the search is given
 * up; another may be nearer by a twentieth of the way, no more.
 *
 * @param held the piece, taken up
 * @param level the level to look on
 * @param wish where she would like it
 * @param withinMm how far to look; the whole shelf where it is left out
 * @returns null where there is no room so near
 */
export function findRoom(held: HeldPiece, level: number, wish: Spot, withinMm = Number.POSITIVE_INFINITY): Spot | null {
  if (held.mayStand(wish, level)) return wish;
  const isLight = withinMm < LIGHT_MM;
  for (const turn of held.isRound || isLight ? [0] : TURNS_DEG) {
    const turned = { ...wish, turnDeg: wish.turnDeg + turn };
    if (turn !== 0 && held.mayStand(turned, level)) return turned;
    const mostAsked = isLight ? MOST_ASKED_LIGHTLY : turn === 0 ? MOST_ASKED : MOST_ASKED_TURNED;
    const found = nearestRoom(held, level, turned, withinMm, mostAsked);
    if (found) return found;
  }
  return null;
}

/** A square part of the shelf, and how near to the wish anything in it can be; or a place that will do. */
interface Part {
  readonly x: number;
  readonly y: number;
  /** Half its side; zero for a place that will do. */
  readonly half: number;
  readonly nearMm: number;
}

/**
 * Looks at squares of the shelf, those nearest to the wish first. From a square's middle the piece would have to be moved
 * a known way at least before it could stand: a square that ends sooner is let go whole, others are quartered. A place
 * that will do is taken once nothing left could be nearer by more than a little.
 */
function nearestRoom(held: HeldPiece, level: number, wish: Spot, withinMm: number, mostAsked: number): Spot | null {
  const ground = held.ground(level);
  if (!ground) return null;
  const waiting = new NearestFirst();
  const put = (x: number, y: number, half: number): void => {
    const away = Math.hypot(Math.max(0, Math.abs(x - wish.xMm) - half), Math.max(0, Math.abs(y - wish.yMm) - half));
    if (away > withinMm) return;
    // All round a pot in the middle of a bare shelf places are equally near: to find the very nearest would be to look
    // at every one of them.
    waiting.add({ x, y, half, nearMm: half > 0 ? away : away - littleMm(away) });
  };
  if (withinMm < ground.reachMm) put(wish.xMm, wish.yMm, withinMm);
  else put(ground.x, ground.y, ground.reachMm);
  let known: Part | null = null;
  for (let asked = 0; asked < mostAsked; asked++) {
    const part = waiting.take();
    if (!part) break;
    const { x, y, half } = part;
    if (half === 0) {
      known = part;
      break;
    }
    const farthest = half * Math.SQRT2;
    const short = held.shortMm({ ...wish, xMm: x, yMm: y }, level, farthest);
    if (short > farthest) continue;
    if (short === 0) put(x, y, 0);
    if (short === 0 && known === null) known = { ...part, half: 0 };
    if (half <= FINEST_MM) continue;
    const quarter = half / 2;
    for (const dx of [-quarter, quarter]) for (const dy of [-quarter, quarter]) put(x + dx, y + dy, quarter);
  }
  return known && drawnNearer(held, level, wish, { ...wish, xMm: known.x, yMm: known.y });
}

/** So much farther than the nearest place is as good as it: nobody wishes a place to the millimetre from across a shelf. */
const littleMm = (awayMm: number): number => 0.1 + 0.04 * awayMm;

/** Halves the way between a place that will not do and one that does, and rounds to tenths where that will do too. */
function drawnNearer(held: HeldPiece, level: number, wish: Spot, found: Spot): Spot {
  let best = found;
  let low = 0;
  let high = 1;
  for (let step = 0; step < CLOSER_STEPS; step++) {
    const middle = (low + high) / 2;
    const xMm = wish.xMm + (found.xMm - wish.xMm) * middle;
    const yMm = wish.yMm + (found.yMm - wish.yMm) * middle;
    const spot = { ...found, xMm, yMm };
    if (held.mayStand(spot, level)) {
      best = spot;
      high = middle;
    } else low = middle;
  }
  return inTenths(held, level, best) ?? best;
}

/** The place in tenths of a millimetre, rounded whichever way it may stand. */
function inTenths(held: HeldPiece, level: number, spot: Spot): Spot | null {
  for (const x of [Math.round, Math.floor, Math.ceil]) {
    for (const y of [Math.round, Math.floor, Math.ceil]) {
      const tenths = { ...spot, xMm: x(spot.xMm * 10) / 10, yMm: y(spot.yMm * 10) / 10 };
      if (held.mayStand(tenths, level)) return tenths;
    }
  }
  return null;
}

/** Parts to look at, the nearest to the wish first; of two equally near, the smaller. A heap. */
class NearestFirst {
  readonly #heap: Part[] = [];

  add(part: Part): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push(part);
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!isBefore(part, heap[above] as Part)) break;
      heap[at] = heap[above] as Part;
      at = above;
    }
    heap[at] = part;
  }

  take(): Part | undefined {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined || heap.length === 0) return first;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= heap.length) break;
      if (below + 1 < heap.length && isBefore(heap[below + 1] as Part, heap[below] as Part)) below += 1;
      if (!isBefore(heap[below] as Part, last)) break;
      heap[at] = heap[below] as Part;
      at = below;
    }
    heap[at] = last;
    return first;
  }
}

const isBefore = (a: Part, b: Part): boolean => a.nearMm < b.nearMm || (a.nearMm === b.nearMm && a.half < b.half);
