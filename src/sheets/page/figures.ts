import { element, moved, type SvgNode } from "../svg-writer.ts";
import { type Block, paragraph, together } from "./flow.ts";
import { COLOURS, LINES, mmOfPoints, SIZES, textLine } from "./sheet-style.ts";
import { textWidthMm, wrapText } from "./text-measure.ts";

/** A figure to read at arm's length, and what it is. */
export interface Figure {
  readonly figure: string;
  readonly words: string;
}

const FIGURE_PT = 15;

/** Figures side by side, each over its words, a fine rule between them. */
export function figureStrip(figures: readonly Figure[], widthMm: number): Block {
  const step = widthMm / figures.length;
  const room = step - 6;
  const marks: SvgNode[] = [];
  let height = 0;
  figures.forEach(({ figure, words }, i) => {
    const x = i * step + (i === 0 ? 0 : 3);
    const fitted = Math.min(FIGURE_PT, (FIGURE_PT * room) / textWidthMm(figure, FIGURE_PT, "bold"));
    // A figure too long to stand on one line at a readable size is broken.
    const lines = fitted < SIZES.body ? wrapText(figure, room, SIZES.body, "bold") : [figure];
    const sizePt = Math.max(fitted, SIZES.body);
    lines.forEach((line, row) => {
      marks.push(
        textLine(x, mmOfPoints(FIGURE_PT) + row * mmOfPoints(SIZES.body) * 1.25, line, { sizePt, weight: "bold" }),
      );
    });
    const below = mmOfPoints(FIGURE_PT) + (lines.length - 1) * mmOfPoints(SIZES.body) * 1.25 + 1.4;
    const caption = together(paragraph(words, room, { sizePt: SIZES.small, fill: COLOURS.quiet }));
    marks.push(moved(x, below, caption.marks));
    height = Math.max(height, below + caption.heightMm);
    if (i > 0) {
      const at = i * step - 1;
      marks.push(
        element("line", { x1: at, y1: 0.5, x2: at, y2: 10.5, stroke: COLOURS.line, "stroke-width": LINES.fine }),
      );
    }
  });
  return { heightMm: height, withNext: false, marks };
}
