import { type RefObject, useEffect } from "react";
import { nearer, type Orbit, turned } from "./orbit.ts";

/** What hands do to the picture. */
export interface OrbitHands {
  readonly orbit: () => Orbit;
  readonly turn: (orbit: Orbit) => void;
  /** Pressed without turning, at a place of the picture. */
  readonly press: (x: number, y: number) => void;
}

const TURN_DEG_A_DOT = 0.4;
const TILT_DEG_A_DOT = 0.3;
// A clayey finger wobbles: so far, a press is still a press.
const PRESS_DOTS = 7;
const WHEEL = 0.0012;

interface Finger {
  x: number;
  y: number;
}

/** Turns the picture by mouse, pen and fingers: one turns, two come nearer or farther, a wheel too. */
export function useOrbitHands(place: RefObject<HTMLElement | null>, hands: OrbitHands): void {
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const fingers = new Map<number, Finger>();
    let moved = 0;
    const spread = (): number => {
      const [a, b] = [...fingers.values()];
      return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
    };
    const down = (event: PointerEvent): void => {
      element.setPointerCapture(event.pointerId);
      if (fingers.size === 0) moved = 0;
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    };
    const move = (event: PointerEvent): void => {
      const finger = fingers.get(event.pointerId);
      if (!finger) return;
      const [byX, byY] = [event.clientX - finger.x, event.clientY - finger.y];
      const before = spread();
      finger.x = event.clientX;
      finger.y = event.clientY;
      moved += Math.hypot(byX, byY);
      if (fingers.size === 2) {
        if (before > 0) hands.turn(nearer(hands.orbit(), spread() / before));
      } else if (moved > PRESS_DOTS) {
        hands.turn(turned(hands.orbit(), -byX * TURN_DEG_A_DOT, byY * TILT_DEG_A_DOT));
      }
    };
    const up = (event: PointerEvent): void => {
      if (!fingers.delete(event.pointerId) || fingers.size > 0 || moved > PRESS_DOTS) return;
      const box = element.getBoundingClientRect();
      hands.press(event.clientX - box.left, event.clientY - box.top);
    };
    const gone = (event: PointerEvent): void => {
      fingers.delete(event.pointerId);
    };
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      hands.turn(nearer(hands.orbit(), Math.exp(-event.deltaY * WHEEL)));
    };
    element.addEventListener("pointerdown", down);
    element.addEventListener("pointermove", move);
    element.addEventListener("pointerup", up);
    element.addEventListener("pointercancel", gone);
    element.addEventListener("wheel", wheel, { passive: false });
    return () => {
      element.removeEventListener("pointerdown", down);
      element.removeEventListener("pointermove", move);
      element.removeEventListener("pointerup", up);
      element.removeEventListener("pointercancel", gone);
      element.removeEventListener("wheel", wheel);
    };
  }, [place, hands]);
}
