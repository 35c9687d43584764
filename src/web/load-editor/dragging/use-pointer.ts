import { type PointerEvent, type RefObject, useEffect, useRef } from "react";
import type { Spot } from "../../../loading/editing/edit-pieces.ts";
import { degrees } from "../../../measures/angle.ts";
import type { Place } from "../../../studio/loads/places.ts";
import { holdTouch } from "../../parts/hold-touch.ts";
import { isPlaced, type Piece } from "./hand.ts";
import { directionDeg, overOf, pieceUnder, placeOf, steadyTurn } from "./under-pointer.ts";
import type { InHand } from "./use-hand.ts";

/** So far a pointer goes before a press becomes a drag. */
const DRAG_PX = 6;

interface Press {
  readonly pointerId: number;
  readonly piece: Piece;
  readonly startX: number;
  readonly startY: number;
  lastX: number;
  lastY: number;
  /** From the pointer to the piece's axis, in the kiln's millimetres. */
  readonly offX: number;
  readonly offY: number;
  readonly turns: boolean;
  spot: Spot;
  isDragging: boolean;
}

/** A second finger beside the one that holds the piece: together they turn it. */
interface Twist {
  readonly pointerId: number;
  x: number;
  y: number;
  /** The direction from the first finger to it, and the piece's turn, when it came. */
  readonly angleDeg: number;
  readonly turnDeg: number;
}

/** What a pressed and dragged piece needs of the screen. */
export interface PointerPorts {
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly inHand: InHand;
  readonly spotOf: (piece: Piece) => Spot | null;
  /** Taken up: it is the one she is at now. */
  readonly taken: (piece: Piece) => void;
  /** Pressed without dragging. */
  readonly pressed: (place: Place | null) => void;
  /** She is letting two pieces change places: a drop onto another piece does it. */
  readonly isSwapping: boolean;
}

export interface PointerHandlers {
  readonly onPointerDown: (event: PointerEvent<Element>) => void;
  readonly onPointerMove: (event: PointerEvent<Element>) => void;
  readonly onPointerUp: (event: PointerEvent<Element>) => void;
  readonly onPointerCancel: () => void;
}

/** Pressing, dragging and turning pieces by mouse or finger. */
export function usePointer({ svg, inHand, spotOf, taken, pressed, isSwapping }: PointerPorts): PointerHandlers & {
  /** Begins with a piece that waits, from outside the drawing. */
  readonly pressWaiting: (event: PointerEvent<Element>, ware: string, onPressed: () => void) => void;
} {
  const press = useRef<(Press & { onPressed?: () => void }) | null>(null);
  const twist = useRef<Twist | null>(null);
  const ground = useRef<{ pointerId: number; x: number; y: number } | null>(null);

  // The page must not scroll with a piece in hand.
  useEffect(() => holdTouch(svg.current, () => press.current !== null));

  const kilnAt = (event: PointerEvent<Element>): { x: number; y: number } => {
    const matrix = svg.current?.getScreenCTM()?.inverse();
    if (!matrix) return { x: 0, y: 0 };
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    return { x: at.x, y: -at.y };
  };

  const down = (event: PointerEvent<Element>): void => {
    if (event.button !== 0) return;
    if (press.current) return beginTwist(event);
    const target = event.target as Element;
    const turns = target.closest("[data-turn-handle]") !== null;
    const key =
      target.closest("[data-turn-handle]")?.getAttribute("data-turn-handle") ??
      target.closest("[data-place]")?.getAttribute("data-place");
    if (!key) {
      ground.current = { pointerId: event.pointerId, x: event.clientX, y: event.clientY };
      return;
    }
    const piece = placeOf(key);
    const spot = spotOf(piece);
    if (!spot) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = kilnAt(event);
    press.current = {
      ...{ pointerId: event.pointerId, piece, startX: event.clientX, startY: event.clientY, spot, turns },
      ...{ lastX: event.clientX, lastY: event.clientY },
      offX: spot.xMm - at.x,
      offY: spot.yMm - at.y,
      isDragging: false,
    };
  };

  const pressWaiting = (event: PointerEvent<Element>, ware: string, onPressed: () => void): void => {
    if (event.button !== 0 || press.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    press.current = {
      ...{ pointerId: event.pointerId, piece: { ware }, startX: event.clientX, startY: event.clientY },
      ...{ lastX: event.clientX, lastY: event.clientY },
      ...{ offX: 0, offY: 0, spot: { xMm: 0, yMm: 0, turnDeg: 0 }, turns: false, isDragging: false, onPressed },
    };
  };

  const beginTwist = (event: PointerEvent<Element>): void => {
    const held = press.current;
    if (!held?.isDragging || held.turns || twist.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const [x, y] = [event.clientX, event.clientY];
    const angleDeg = directionDeg(held.lastX, held.lastY, x, y);
    twist.current = { pointerId: event.pointerId, x, y, angleDeg, turnDeg: held.spot.turnDeg };
  };

  const move = (event: PointerEvent<Element>): void => {
    const held = press.current;
    if (held && twist.current?.pointerId === event.pointerId) {
      Object.assign(twist.current, { x: event.clientX, y: event.clientY });
      turnByTwist(held, twist.current);
      return;
    }
    if (held?.pointerId !== event.pointerId) return;
    if (!held.isDragging) {
      if (Math.hypot(event.clientX - held.startX, event.clientY - held.startY) < DRAG_PX) return;
      held.isDragging = true;
      if (!inHand.take(held.piece, "pointer")) {
        press.current = null;
        return;
      }
      taken(held.piece);
    }
    Object.assign(held, { lastX: event.clientX, lastY: event.clientY });
    const at = kilnAt(event);
    if (held.turns) {
      const angle = degrees(Math.atan2(at.y - held.spot.yMm, at.x - held.spot.xMm));
      inHand.move({ ...held.spot, turnDeg: steadyTurn(angle) }, false);
      return;
    }
    inHand.setOver(overOf(event, svg.current));
    held.spot = { ...held.spot, xMm: at.x + held.offX, yMm: at.y + held.offY };
    if (twist.current) turnByTwist(held, twist.current);
    else inHand.move(held.spot);
  };

  const turnByTwist = (held: Press, { x, y, angleDeg, turnDeg }: Twist): void => {
    const byDeg = directionDeg(held.lastX, held.lastY, x, y) - angleDeg;
    held.spot = { ...held.spot, turnDeg: Math.round(turnDeg + byDeg) };
    inHand.move(held.spot);
  };

  const up = (event: PointerEvent<Element>): void => {
    if (twist.current?.pointerId === event.pointerId) {
      twist.current = null;
      return;
    }
    const onGround = ground.current;
    ground.current = null;
    if (onGround?.pointerId === event.pointerId) {
      if (Math.hypot(event.clientX - onGround.x, event.clientY - onGround.y) < DRAG_PX) pressed(null);
      return;
    }
    const held = press.current;
    if (held?.pointerId !== event.pointerId) return;
    press.current = null;
    twist.current = null;
    if (!held.isDragging) {
      if (held.onPressed) held.onPressed();
      else if (isPlaced(held.piece)) pressed(held.piece);
      return;
    }
    const other = isSwapping && !held.turns ? pieceUnder(event, held.piece) : null;
    if (other) inHand.dropOnto(other);
    else inHand.drop();
  };

  const cancel = (): void => {
    if (press.current?.isDragging) inHand.letGo();
    press.current = null;
    twist.current = null;
    ground.current = null;
  };

  return { onPointerDown: down, onPointerMove: move, onPointerUp: up, onPointerCancel: cancel, pressWaiting };
}
