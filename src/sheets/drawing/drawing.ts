import { moved, type SvgNode } from "../svg-writer.ts";

/** Words on a drawing and the box they fill, in the drawing's own millimetres. */
export interface LabelBox {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A drawing to scale about its own origin, and the box it fills. Millimetres of paper. */
export interface Drawing {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly SvgNode[];
  readonly labels: readonly LabelBox[];
}

/** The drawing set down with its top left corner at a place on the page. */
export const drawnAt = (drawing: Drawing, x: number, y: number): SvgNode =>
  moved(x - drawing.left, y - drawing.top, drawing.marks);

/** Whether two boxes share any room. Boxes that touch do not. */
export const overlap = (a: Omit<LabelBox, "text">, b: Omit<LabelBox, "text">): boolean =>
  a.x < b.x + b.width - 1e-6 &&
  b.x < a.x + a.width - 1e-6 &&
  a.y < b.y + b.height - 1e-6 &&
  b.y < a.y + a.height - 1e-6;
