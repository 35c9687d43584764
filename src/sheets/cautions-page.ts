import type { LengthUnits } from "../measures/length.ts";
import { CAUTIONS, CAUTIONS_FIRST } from "./cautions.ts";
import { flowLevel, paragraph, smallHeading, space, together } from "./page/flow.ts";
import { bodyFrame, columnsOf, type PageContent, type Paper } from "./page/sheet-page.ts";
import { COLOURS, LINES, SIZES } from "./page/sheet-style.ts";
import { element, moved, type SvgNode } from "./svg-writer.ts";

const BOX_PADDING_MM = 4;

/** What to mind, with the sources in small print. */
export function cautionPages(paper: Paper, units: LengthUnits): PageContent[] {
  const body = bodyFrame(paper);
  const first = together(paragraph(CAUTIONS_FIRST, body.width - 2 * BOX_PADDING_MM, { weight: "bold" }));
  const boxHeight = first.heightMm + 2 * BOX_PADDING_MM - 1;
  const box: SvgNode[] = [
    element("rect", {
      x: body.x,
      y: body.y,
      width: body.width,
      height: boxHeight,
      fill: COLOURS.clay,
      stroke: COLOURS.accent,
      "stroke-width": LINES.fine,
      rx: 1,
    }),
    moved(body.x + BOX_PADDING_MM, body.y + BOX_PADDING_MM - 0.5, first.marks),
  ];
  const columns = columnsOf(body, 2, 10);
  const width = columns[0]?.width ?? 0;
  const blocks = CAUTIONS.flatMap(({ title, text, source }) => [
    ...smallHeading(title, width),
    ...paragraph(text(units), width),
    space(0.8),
    ...paragraph(source, width, { sizePt: SIZES.small, fill: COLOURS.quiet }),
    space(4),
  ]);
  const y = body.y + boxHeight + 6;
  const below = columnsOf({ ...body, y, height: body.y + body.height - y }, 2, 10);
  return flowLevel(blocks, below, columns).map((marks, i) => ({
    title: i === 0 ? "Cautions" : "Cautions, continued",
    above: "Before, during and after the firing",
    marks: i === 0 ? [...box, ...marks] : marks,
  }));
}
