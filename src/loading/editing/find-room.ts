import type { Spot } from "./edit-pieces.ts";
import type { HeldPiece } from "./live-answer.ts";

/** Rings round the wished place, near ones close together: what is looked at first is what she would choose. */
const RINGS_MM = [1, 2, 3, 5, 8, 12, 17, 23, 30, 38, 47, 57, 68, 80, 95, 110, 130, 150, 175, 200, 230, 260, 300, 350];
const APART_MM = 9;
const CLOSER_STEPS = 12;

/** How a piece may be turned while room is looked for: as it is held, then away from that either way. */
const TURNS_DEG = [0, 30, -30, 60, -60, 90, -90, 120, -120, 150, -150, 180];

/**
 * The nearest place to a wished one where a held piece breaks no rule, looked for in widening rings, each place first
 * with the turn it is held at. What is found is drawn toward the wish as far as it may go.
 *
 * @param held the piece, taken up
 * @param level the level to look on
 * @param wish where she would like it
 * @param withinMm how far to look; the whole chamber where it is left out
 * @returns null where there is no room so near
 */
export function findRoom(held: HeldPiece, level: number, wish: Spot, withinMm = Number.POSITIVE_INFINITY): Spot | null {
  if (held.mayStand(wish, level)) return wish;
  // A light snap while she drags keeps the turn she chose.
  for (const turn of held.isRound || withinMm < 20 ? [0] : TURNS_DEG) {
    const turned = { ...wish, turnDeg: wish.turnDeg + turn };
    if (turn !== 0 && held.mayStand(turned, level)) return turned;
    const found = nearestOnRings(held, level, turned, withinMm);
    if (found) return drawnNearer(held, level, turned, found);
  }
  return null;
}

function nearestOnRings(held: HeldPiece, level: number, wish: Spot, withinMm: number): Spot | null {
  for (const ring of RINGS_MM) {
    if (ring > withinMm) return null;
    const places = Math.max(12, Math.round((2 * Math.PI * ring) / APART_MM));
    for (let i = 0; i < places; i++) {
      const angle = (2 * Math.PI * i) / places;
      const spot = { ...wish, xMm: wish.xMm + ring * Math.cos(angle), yMm: wish.yMm + ring * Math.sin(angle) };
      if (held.mayStand(spot, level)) return spot;
    }
  }
  return null;
}

/** Halves the way between a place that will not do and one that does, staying where it does; to a tenth of a millimetre. */
function drawnNearer(held: HeldPiece, level: number, wish: Spot, found: Spot): Spot {
  let best = found;
  let low = 0;
  let high = 1;
  for (let step = 0; step < CLOSER_STEPS; step++) {
    const middle = (low + high) / 2;
    const spot = {
      ...found,
      xMm: tenth(wish.xMm + (found.xMm - wish.xMm) * middle),
      yMm: tenth(wish.yMm + (found.yMm - wish.yMm) * middle),
    };
    if (held.mayStand(spot, level)) {
      best = spot;
      high = middle;
    } else low = middle;
  }
  return best;
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10;
