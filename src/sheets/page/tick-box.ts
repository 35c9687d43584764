import { element, type SvgNode } from "../svg-writer.ts";
import { COLOURS, LINES } from "./sheet-style.ts";

/** An empty box to tick, its top left corner at a place. */
export const tickBox = (x: number, y: number, sizeMm = 3.6): SvgNode =>
  element("rect", {
    x,
    y,
    width: sizeMm,
    height: sizeMm,
    rx: 0.5,
    fill: COLOURS.paper,
    stroke: COLOURS.quiet,
    "stroke-width": LINES.fine,
  });
