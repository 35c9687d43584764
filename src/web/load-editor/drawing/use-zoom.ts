import { type RefObject, useEffect, useRef, useState } from "react";
import { type Box, boxText, panned, readBox, zoomed, zoomOf } from "./zoom.ts";

export interface ZoomPorts {
  readonly svg: RefObject<SVGSVGElement | null>;
  /** The viewBox that shows all. */
  readonly whole: string;
  /** False while a piece is in hand: fingers then turn it. */
  readonly mayZoom: () => boolean;
  /** Two fingers are at it: what one of them had pressed is to be let go. */
  readonly begins: () => void;
}

export interface Zoom {
  /** For the SVG. */
  readonly viewBox: string;
  readonly isZoomed: boolean;
  /** How many times nearer than the whole: what is to stay as large on the screen is drawn so much smaller. */
  readonly times: number;
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  /** Shows all again. */
  readonly fit: () => void;
}

const STEP = 1.5;
const WHEEL = 0.01;

/**
 * Coming nearer to a drawing: by two fingers, by the wheel with Control held (so a pad's pinch comes too), by buttons;
 * once near, the bare ground is dragged to look about. While fingers move only the SVG's viewBox is set.
 */
export function useZoom({ svg, whole, mayZoom, begins }: ZoomPorts): Zoom {
  const all = readBox(whole);
  const [kept, setKept] = useState<Box | null>(null);
  const now = useRef({ all, view: kept ?? all, mayZoom, begins });
  now.current = { ...now.current, all, mayZoom, begins };

  // Another kiln: all of it is shown first.
  const wholeBefore = useRef(whole);
  if (wholeBefore.current !== whole) {
    wholeBefore.current = whole;
    now.current.view = all;
    if (kept) setKept(null);
  }

  const show = (view: Box, isDone: boolean): void => {
    now.current.view = view;
    svg.current?.setAttribute("viewBox", boxText(view));
    if (isDone) setKept(zoomOf(now.current.all, view) > 1.001 ? view : null);
  };
  const showing = useRef(show);
  showing.current = show;

  useEffect(() => {
    const element = svg.current;
    if (!element) return;
    return listen(
      element,
      () => now.current,
      (view, isDone) => showing.current(view, isDone),
    );
  }, [svg]);

  const about = () => {
    const { x, y, width, height } = now.current.view;
    return { x: x + width / 2, y: y + height / 2 };
  };
  return {
    viewBox: boxText(kept ?? all),
    isZoomed: kept !== null,
    times: kept ? zoomOf(all, kept) : 1,
    zoomIn: () => show(zoomed(all, now.current.view, STEP, about()), true),
    zoomOut: () => show(zoomed(all, now.current.view, 1 / STEP, about()), true),
    fit: () => show(all, true),
  };
}

interface Now {
  readonly all: Box;
  readonly view: Box;
  readonly mayZoom: () => boolean;
  readonly begins: () => void;
}

function listen(element: SVGSVGElement, now: () => Now, show: (view: Box, isDone: boolean) => void): () => void {
  const fingers = new Map<number, { x: number; y: number }>();
  let isPinching = false;
  let isPanning = false;

  const inDrawing = (x: number, y: number): { x: number; y: number } => {
    const matrix = element.getScreenCTM()?.inverse();
    return matrix ? new DOMPoint(x, y).matrixTransform(matrix) : { x: 0, y: 0 };
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    const { all, view, mayZoom, begins } = now();
    if (fingers.size === 2 && mayZoom()) {
      isPinching = true;
      isPanning = false;
      begins();
      event.stopPropagation();
    } else if (fingers.size === 1 && zoomOf(all, view) > 1.001) {
      isPanning = (event.target as Element).closest("[data-place], [role=button], [role=slider]") === null;
    }
  };
  const move = (event: PointerEvent): void => {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const { all, view } = now();
    const at = { x: event.clientX, y: event.clientY };
    if (isPanning && fingers.size === 1) {
      const [from, to] = [inDrawing(before.x, before.y), inDrawing(at.x, at.y)];
      show(panned(all, view, from.x - to.x, from.y - to.y), false);
    }
    if (isPinching) {
      event.stopPropagation();
      const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
      if (other) {
        const apart = Math.hypot(before.x - other.x, before.y - other.y);
        const [from, to] = [middle(before, other, inDrawing), middle(at, other, inDrawing)];
        const nearer = zoomed(all, view, Math.hypot(at.x - other.x, at.y - other.y) / Math.max(apart, 1), from);
        show(panned(all, nearer, from.x - to.x, from.y - to.y), false);
      }
    }
    fingers.set(event.pointerId, at);
  };
  const up = (event: PointerEvent): void => {
    if (!fingers.delete(event.pointerId)) return;
    if (isPinching) event.stopPropagation();
    if ((isPinching && fingers.size < 2) || isPanning) show(now().view, true);
    isPanning = false;
    if (fingers.size === 0) isPinching = false;
  };
  const wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const { all, view } = now();
    show(zoomed(all, view, Math.exp(-event.deltaY * WHEEL), inDrawing(event.clientX, event.clientY)), true);
  };
  // Before React hears of them: a pinch is not a press on a piece.
  const early = { capture: true } as const;
  element.addEventListener("pointerdown", down, early);
  element.addEventListener("pointermove", move, early);
  element.addEventListener("pointerup", up, early);
  element.addEventListener("pointercancel", up, early);
  element.addEventListener("wheel", wheel, { passive: false });
  return () => {
    element.removeEventListener("pointerdown", down, early);
    element.removeEventListener("pointermove", move, early);
    element.removeEventListener("pointerup", up, early);
    element.removeEventListener("pointercancel", up, early);
    element.removeEventListener("wheel", wheel);
  };
}

type Point = { readonly x: number; readonly y: number };

const middle = (a: Point, b: Point, inDrawing: (x: number, y: number) => Point): Point =>
  inDrawing((a.x + b.x) / 2, (a.y + b.y) / 2);
