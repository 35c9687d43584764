import { element, type SvgNode, svgText } from "../svg-writer.ts";
import { COLOURS, LINES, SIZES, textLine } from "./sheet-style.ts";
import { shortenedText, textWidthMm } from "./text-measure.ts";

export type Paper = "a4" | "letter";

/** One page: a whole SVG document, its user unit a millimetre. */
export interface SheetPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly svg: string;
  readonly title: string;
}

/** ISO 216 A4; US Letter, 8 1/2 by 11 inches (ANSI/ASME Y14.1, size A). */
export const PAPERS: Readonly<Record<Paper, { widthMm: number; heightMm: number }>> = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
};

/** A rectangle of the page. Millimetres from its top left corner. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const SIDE_MARGIN_MM = 17;
const BOTTOM_MARGIN_MM = 20;
const BODY_TOP_MM = 37;

/** Where a page's own content goes, between its heading and its foot. */
export function bodyFrame(paper: Paper): Frame {
  const { widthMm, heightMm } = PAPERS[paper];
  return {
    x: SIDE_MARGIN_MM,
    y: BODY_TOP_MM,
    width: widthMm - 2 * SIDE_MARGIN_MM,
    height: heightMm - BODY_TOP_MM - BOTTOM_MARGIN_MM,
  };
}

/** The columns of a frame, `gapMm` between them. */
export function columnsOf(frame: Frame, count: number, gapMm = 8): Frame[] {
  const width = (frame.width - gapMm * (count - 1)) / count;
  return Array.from({ length: count }, (_, i) => ({ ...frame, x: frame.x + i * (width + gapMm), width }));
}

/** What a page holds before it knows how many pages there are. */
export interface PageContent {
  readonly title: string;
  /** A few words above the title. */
  readonly above: string;
  /** Words at the right of the heading. */
  readonly beside?: string;
  readonly marks: readonly SvgNode[];
}

/** The page with its heading and foot, as a whole SVG document. */
export function drawPage(content: PageContent, paper: Paper, foot: string, number: number, of: number): SheetPage {
  const { widthMm, heightMm } = PAPERS[paper];
  const { x, width } = bodyFrame(paper);
  const right = x + width;
  const beside = content.beside ?? "";
  const besideWidth = beside === "" ? 0 : textWidthMm(beside, SIZES.body, "regular") + 6;
  const footY = heightMm - BOTTOM_MARGIN_MM + 9;
  const count = `${number} of ${of}`;
  const marks = [
    element("rect", { x: 0, y: 0, width: widthMm, height: heightMm, fill: COLOURS.paper }),
    element("rect", { x, y: 12, width: 14, height: 1.3, fill: COLOURS.accent }),
    textLine(x, 19, shortenedText(content.above, width, SIZES.small, "bold"), {
      sizePt: SIZES.small,
      weight: "bold",
      fill: COLOURS.accent,
    }),
    textLine(x, 29.5, shortenedText(content.title, width - besideWidth, SIZES.title, "bold"), {
      sizePt: SIZES.title,
      weight: "bold",
    }),
    textLine(right, 29.5, beside, { anchor: "end", fill: COLOURS.quiet }),
    ...content.marks,
    element("line", {
      x1: x,
      y1: footY - 5,
      x2: right,
      y2: footY - 5,
      stroke: COLOURS.line,
      "stroke-width": LINES.fine,
    }),
    textLine(x, footY, shortenedText(foot, width - 25, SIZES.small), { sizePt: SIZES.small, fill: COLOURS.quiet }),
    textLine(right, footY, count, { sizePt: SIZES.small, fill: COLOURS.quiet, anchor: "end" }),
  ].filter((mark) => mark.name !== "text" || mark.children[0] !== "");
  const root = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width: `${widthMm}mm`,
      height: `${heightMm}mm`,
      viewBox: `0 0 ${widthMm} ${heightMm}`,
    },
    element("title", {}, `${content.title}, ${foot}, page ${count}`),
    ...marks,
  );
  return { widthMm, heightMm, svg: svgText(root), title: content.title };
}
