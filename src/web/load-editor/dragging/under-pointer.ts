import type { PointerEvent } from "react";
import { degrees } from "../../../measures/angle.ts";
import type { Place } from "../../../studio/loads/places.ts";
import { isPlaced, type Piece } from "./hand.ts";
import type { Over } from "./use-hand.ts";

/** Turning by hand stays at every 15° when so near it. */
const STAYS_DEG = 3;
const STEP_DEG = 15;

/** From one place on the screen to another, counter-clockwise. */
export const directionDeg = (fromX: number, fromY: number, toX: number, toY: number): number =>
  degrees(Math.atan2(fromY - toY, toX - fromX));

/** A place from its key. */
export function placeOf(key: string): Place {
  const [level = 0, placement = 0] = key.split(".").map(Number);
  return { level, placement };
}

/** A turn by hand: whole degrees, and every 15° a little sticky. */
export function steadyTurn(deg: number): number {
  const step = Math.round(deg / STEP_DEG) * STEP_DEG;
  return Math.abs(deg - step) <= STAYS_DEG ? step : Math.round(deg);
}

/** The piece under a pointer, other than the one that is held. */
export function pieceUnder(event: PointerEvent, held: Piece): Place | null {
  for (const element of document.elementsFromPoint(event.clientX, event.clientY)) {
    const key = element.closest("[data-place]")?.getAttribute("data-place");
    if (!key) continue;
    const place = placeOf(key);
    if (!isPlaced(held) || held.level !== place.level || held.placement !== place.placement) return place;
  }
  return null;
}

/** What the pointer is over: the drawing itself (null), a level, the tray, or nothing that takes a piece. */
export function overOf(event: PointerEvent, svg: SVGSVGElement | null): Over {
  const box = svg?.getBoundingClientRect();
  const { clientX: x, clientY: y } = event;
  if (box && x >= box.left && x <= box.right && y >= box.top && y <= box.bottom) return null;
  const under = document.elementFromPoint(x, y);
  const level = under?.closest("[data-drop-level]")?.getAttribute("data-drop-level");
  if (level) return { level: Number(level) };
  return under?.closest("[data-drop-tray]") ? "tray" : "nothing";
}
