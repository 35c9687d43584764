import { type KeyboardEvent, type PointerEvent, type ReactNode, useCallback, useRef } from "react";
import { holdTouch } from "../../parts/hold-touch.ts";
import { keyMove } from "../wall-drag.ts";
import styles from "./Drawing.module.css";
import type { Frame } from "./frame.ts";

interface HandleProps {
  readonly frame: Frame;
  readonly x: number;
  readonly y: number;
  readonly selected: boolean;
  /** For ears: what it is, where it is. */
  readonly label: string;
  readonly valueText: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly onFocus: () => void;
  /** Mouse or finger is down on it. */
  readonly onGrab: () => void;
  /** The finger is there, in the drawing's millimetres. */
  readonly onDrag: (x: number, y: number) => void;
  readonly onKey: (turnDeg: number, upMm: number) => void;
  readonly children: ReactNode;
}

/** Something in a drawing that is dragged by mouse or finger, or moved with the arrow keys. */
export function Handle(props: HandleProps) {
  const { frame, x, y, selected, label, value, valueText, min, max, onFocus, onGrab, onDrag, onKey, children } = props;
  const held = useRef<{ id: number; dx: number; dy: number } | null>(null);

  const hold = useCallback((element: SVGGElement | null) => holdTouch(element, () => held.current !== null), []);
  const down = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeIn(event);
    held.current = { id: event.pointerId, dx: x - at.x, dy: y - at.y };
    onGrab();
  };
  const move = (event: PointerEvent<SVGGElement>) => {
    if (held.current?.id !== event.pointerId) return;
    const at = placeIn(event);
    onDrag(at.x + held.current.dx, at.y + held.current.dy);
  };
  const up = () => {
    held.current = null;
  };
  const key = (event: KeyboardEvent) => {
    const moved = keyMove(event.key, event.shiftKey);
    if (!moved) return;
    event.preventDefault();
    onKey(moved.turnDeg, moved.upMm);
  };

  return (
    <g
      ref={hold}
      className={`${styles.handle} ${selected ? styles.selected : ""}`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={value}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuetext={valueText}
      onFocus={onFocus}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={up}
      onKeyDown={key}
    >
      <circle className={styles.finger} cx={x} cy={y} r={frame.finger} />
      <circle className={styles.halo} cx={x} cy={y} r={frame.finger * 0.72} strokeWidth={frame.letter * 0.13} />
      {children}
    </g>
  );
}

function placeIn(event: PointerEvent<SVGGElement>): { x: number; y: number } {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM()?.inverse();
  return matrix ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix) : { x: 0, y: 0 };
}
