import { formatLength, type LengthUnits, lengthsInUnits } from "../measures/length.ts";
import { drawnAt } from "./drawing/drawing.ts";
import { elevationDrawing } from "./drawing/elevation-drawing.ts";
import { fittingDrawing } from "./drawing/fitting-drawing.ts";
import { barLengthMm, SCALE_BAR_HEIGHT_MM, scaleBar } from "./drawing/scale-bar.ts";
import { type Block, flowLevel, heading, marked, paragraph, space, together } from "./page/flow.ts";
import { bodyFrame, columnsOf, type PageContent, type Paper } from "./page/sheet-page.ts";
import { COLOURS, LINES, mmOfPoints, SIZES, textLine } from "./page/sheet-style.ts";
import { textWidthMm } from "./page/text-measure.ts";
import { tickBox } from "./page/tick-box.ts";
import { postTally } from "./post-words.ts";
import type { SheetLoad } from "./sheet-load.ts";
import { element, moved, type SvgNode } from "./svg-writer.ts";

/** The drawing fills at most this much of the page's height, and at least the lesser share where the list then fits too. */
const LARGEST_SHARE = 0.52;
const LEAST_SHARE = 0.34;
/** So many broken rules are told one by one; a page of them helps nobody at the kiln. */
const MOST_BROKEN = 12;
const TO_FILL_IN = ["date", "firing number", "cone", "loaded by"];

/** The whole kiln at a glance: its elevation, what to lay out, what stays out and why. */
export function overviewPages(
  load: SheetLoad,
  title: string,
  broken: readonly { readonly message: string }[],
  paper: Paper,
  units: LengthUnits,
): PageContent[] {
  const body = bodyFrame(paper);
  const columns = columnsOf(body, 2);
  const width = columns[0]?.width ?? 0;
  const blocks = [
    ...brokenBlocks(broken, width, units),
    ...layOutBlocks(load, width, units),
    ...pieceBlocks(load, width),
    ...leftBlocks(load, width, units),
  ];
  const drawingY = body.y + 13;
  const list = (drawingHeight: number): SvgNode[][] => {
    const y = drawingY + drawingHeight + 3 + SCALE_BAR_HEIGHT_MM + 4;
    return flowLevel(blocks, columnsOf({ ...body, y, height: body.y + body.height - y }, 2), columns);
  };
  const drawing = fittingDrawing(
    (scale) => elevationDrawing(load, scale, units),
    (each, share) => each.width <= body.width && each.height <= body.height * share,
    (each) => list(each.height).length === 1,
    { largest: LARGEST_SHARE, least: LEAST_SHARE },
  );
  const barY = drawingY + drawing.height + 3;
  const marks = [
    ...toFillIn(body.x, body.y + 4, body.width),
    drawnAt(drawing, body.x + (body.width - drawing.width) / 2, drawingY),
    textLine(body.x, barY + 5.6, "seen from the front, 6 o’clock toward you, cut open", {
      sizePt: SIZES.small,
      fill: COLOURS.quiet,
    }),
    moved(body.x + body.width - barLengthMm(units), barY, [scaleBar(drawing.scale, units)]),
  ];
  return list(drawing.height).map((part, i) => ({
    title: i === 0 ? title : "The load, continued",
    above: "Load sheet",
    beside: i === 0 ? `${load.pieces} of ${load.waiting} pieces` : "",
    marks: i === 0 ? [...marks, ...part] : part,
  }));
}

/** Lines to write on. */
function toFillIn(x: number, y: number, width: number): SvgNode[] {
  const step = width / TO_FILL_IN.length;
  return TO_FILL_IN.flatMap((words, i) => {
    const at = x + i * step;
    const from = at + textWidthMm(words, SIZES.small, "regular") + 1.5;
    return [
      textLine(at, y, words, { sizePt: SIZES.small, fill: COLOURS.quiet }),
      element("line", {
        x1: from,
        y1: y + 0.6,
        x2: at + step - 4,
        y2: y + 0.6,
        stroke: COLOURS.quiet,
        "stroke-width": LINES.hair,
      }),
    ];
  });
}

function brokenBlocks(broken: readonly { readonly message: string }[], width: number, units: LengthUnits): Block[] {
  if (broken.length === 0) return [];
  const count = broken.length === 1 ? "one rule" : `${broken.length} rules`;
  const more = broken.length - MOST_BROKEN;
  return [
    ...heading(`Careful: this plan breaks ${count}`, width),
    ...broken
      .slice(0, MOST_BROKEN)
      .flatMap(({ message }) => [
        ...marked(paragraph(lengthsInUnits(message, units), width, {}, 4), bullet()),
        space(0.8),
      ]),
    ...(more > 0 ? paragraph(`and ${more} more: checking the plan lists them all.`, width, {}, 4) : []),
    space(4),
  ];
}

/** A bead in the accent colour before a line. */
const bullet = (): SvgNode => element("circle", { cx: 1.2, cy: 2.6, r: 0.9, fill: COLOURS.accent });

function layOutBlocks(load: SheetLoad, width: number, units: LengthUnits): Block[] {
  const shelves = tally(load.scene.shelves.map((shelf) => shelf.kind.name));
  const rows = [
    ...shelves.map(([name, count]) => countRow(count, name, "", width)),
    ...postTally(load.scene.posts).map(([height, count]) =>
      countRow(count, `${count === 1 ? "post" : "posts"} of ${formatLength(height, units)}`, "", width),
    ),
  ];
  if (rows.length === 0) return [];
  return [...heading("Lay out", width), ...rows.flat(), space(4)];
}

function pieceBlocks(load: SheetLoad, width: number): Block[] {
  const kinds = tally(load.scene.pieces.map((piece) => piece.ware.name));
  if (kinds.length === 0)
    return [...heading("Nothing goes in", width), ...paragraph("This plan places no piece.", width), space(4)];
  const rows = kinds.map(([name, count]) => {
    const levels = load.levels.filter((level) => level.pieces.some(({ piece }) => piece.ware.name === name));
    const numbers = levels.map((level) => level.number).join(", ");
    return countRow(count, name, `level ${numbers}`, width);
  });
  return [...heading(load.pieces === 1 ? "One piece" : `${load.pieces} pieces`, width), ...rows.flat(), space(4)];
}

/** A tick box, how many, of what, and a few quiet words at the right. */
function countRow(count: number, name: string, beside: string, width: number): Block[] {
  const besideWidth = beside === "" ? 0 : textWidthMm(beside, SIZES.small, "regular") + 3;
  const text = paragraph(name, width - besideWidth, {}, 15);
  const y = mmOfPoints(SIZES.body);
  const number = textLine(13, y, String(count), { weight: "bold", anchor: "end" });
  const words = textLine(width, y, beside, { sizePt: SIZES.small, fill: COLOURS.quiet, anchor: "end" });
  return [together(marked(text, tickBox(0, 0.7), number, ...(beside === "" ? [] : [words]))), space(0.6)];
}

function leftBlocks(load: SheetLoad, width: number, units: LengthUnits): Block[] {
  if (load.plan.left.length === 0) return [...heading("Nothing stays out", width)];
  return [
    ...heading("Stays out, and why", width),
    ...load.plan.left.flatMap(({ ware, count, reason }) => [
      ...paragraph(`${count} × ${ware}`, width, { weight: "bold" }).map((line) => ({ ...line, withNext: true })),
      ...paragraph(lengthsInUnits(reason, units), width, { sizePt: SIZES.small, fill: COLOURS.quiet }),
      space(1.6),
    ]),
  ];
}

function tally(names: readonly string[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts];
}
