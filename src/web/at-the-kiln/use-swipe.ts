import { type TouchEvent, useRef } from "react";

// So far across, and so much more across than along, makes a swipe: a scroll that slants is none.
const LEAST_PX = 60;
const STRAIGHTNESS = 2;

/** What a finger's way over the screen means: a swipe to the left, to the right, or none. */
export function swipeOf(acrossPx: number, alongPx: number): "left" | "right" | null {
  if (Math.abs(acrossPx) < LEAST_PX || Math.abs(acrossPx) < STRAIGHTNESS * Math.abs(alongPx)) return null;
  return acrossPx < 0 ? "left" : "right";
}

/** Handlers for an element to be swiped over with one finger. */
export function useSwipe(on: { readonly left: () => void; readonly right: () => void }) {
  const start = useRef<{ x: number; y: number } | null>(null);
  return {
    onTouchStart: ({ touches }: TouchEvent) => {
      const only = touches.length === 1 ? touches[0] : undefined;
      start.current = only ? { x: only.clientX, y: only.clientY } : null;
    },
    onTouchEnd: ({ changedTouches }: TouchEvent) => {
      const end = changedTouches[0];
      if (!start.current || !end) return;
      const way = swipeOf(end.clientX - start.current.x, end.clientY - start.current.y);
      start.current = null;
      if (way) on[way]();
    },
  };
}
