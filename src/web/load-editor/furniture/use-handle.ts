import { type PointerEvent, useCallback, useRef } from "react";
import { holdTouch } from "../../parts/hold-touch.ts";

/** So far a pointer goes before a press becomes a drag. */
const DRAG_PX = 5;

interface Grip {
  readonly id: number;
  readonly startX: number;
  readonly startY: number;
  readonly offX: number;
  readonly offY: number;
  isDragging: boolean;
}

export interface HandlePorts {
  /** Where the thing is, in the drawing's millimetres. */
  readonly x: number;
  readonly y: number;
  readonly onDrag: (x: number, y: number) => void;
  /** Let go of, after a drag. */
  readonly onDrop: () => void;
  /** The drag was broken off. */
  readonly onCancel: () => void;
}

/** Handlers for something in a drawing that is dragged by mouse or finger. A press that goes nowhere is no drag. */
export function useHandle({ x, y, onDrag, onDrop, onCancel }: HandlePorts) {
  const grip = useRef<Grip | null>(null);
  return {
    ref: useCallback((element: SVGGElement | null) => holdTouch(element, () => grip.current !== null), []),
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      if (event.button !== 0 || grip.current) return;
      // The drawing beneath must not take it for a press on itself.
      event.stopPropagation();
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = placeIn(event);
      const { clientX: startX, clientY: startY, pointerId: id } = event;
      grip.current = { id, startX, startY, offX: x - at.x, offY: y - at.y, isDragging: false };
    },
    onPointerMove: (event: PointerEvent<SVGGElement>) => {
      const held = grip.current;
      if (held?.id !== event.pointerId) return;
      event.stopPropagation();
      held.isDragging ||= Math.hypot(event.clientX - held.startX, event.clientY - held.startY) > DRAG_PX;
      if (!held.isDragging) return;
      const at = placeIn(event);
      onDrag(at.x + held.offX, at.y + held.offY);
    },
    onPointerUp: (event: PointerEvent<SVGGElement>) => {
      const held = grip.current;
      if (held?.id !== event.pointerId) return;
      event.stopPropagation();
      grip.current = null;
      if (held.isDragging) onDrop();
    },
    onPointerCancel: () => {
      grip.current = null;
      onCancel();
    },
  };
}

function placeIn(event: PointerEvent<SVGGElement>): { x: number; y: number } {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM()?.inverse();
  return matrix ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix) : { x: 0, y: 0 };
}
