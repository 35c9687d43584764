import { formatLength, type LengthUnits } from "../measures/length.ts";
import { clockText } from "./clock-direction.ts";
import { drawnAt } from "./drawing/drawing.ts";
import { fittingDrawing } from "./drawing/fitting-drawing.ts";
import { levelDrawing } from "./drawing/level-drawing.ts";
import { levelLegend } from "./drawing/level-legend.ts";
import { barLengthMm, SCALE_BAR_HEIGHT_MM, scaleBar } from "./drawing/scale-bar.ts";
import { type Figure, figureStrip } from "./page/figures.ts";
import { type Block, flowLevel, marked, paragraph, space, together } from "./page/flow.ts";
import { bodyFrame, columnsOf, type Frame, type PageContent, type Paper } from "./page/sheet-page.ts";
import { COLOURS, LINES, mmOfPoints, SIZES, textLine } from "./page/sheet-style.ts";
import { textWidthMm } from "./page/text-measure.ts";
import { tickBox } from "./page/tick-box.ts";
import { postsFigure } from "./post-words.ts";
import { looksIn, type NumberedPiece, type SheetLevel, type SheetLoad } from "./sheet-load.ts";
import { element, moved, type SvgNode } from "./svg-writer.ts";

/** The drawing fills at most this much of the page's height, and at least the lesser share where the list then fits too. */
const LARGEST_SHARE = 0.7;
const LEAST_SHARE = 0.44;
const LIST_INDENT_MM = 14;
const NUMBER_PT = 14;

/** One level: its plan to scale, and beside each number what stands there and how to find its place. */
export function levelPages(load: SheetLoad, level: SheetLevel, paper: Paper, units: LengthUnits): PageContent[] {
  const body = bodyFrame(paper);
  const [column] = columnsOf(body, 2);
  const rows = level.pieces.map((piece) => pieceRow(piece, column?.width ?? 0, units));
  const figures = figureStrip(levelFigures(level, units), body.width);
  const turn = together(paragraph(turnWords(load), body.width, { sizePt: SIZES.small, fill: COLOURS.quiet }));
  const legend = levelLegend(occurring(load, level), body.width - barLengthMm(units) - 8);
  const drawingY = body.y + figures.heightMm + 3;
  const below = 3 + turn.heightMm + Math.max(legend.heightMm, SCALE_BAR_HEIGHT_MM) + 3;
  const listFrame = (drawingHeight: number): Frame => {
    const y = drawingY + drawingHeight + below;
    return { ...body, y, height: body.y + body.height - y };
  };
  const list = (drawingHeight: number): SvgNode[][] =>
    flowLevel(rows, columnsOf(listFrame(drawingHeight), 2), columnsOf(body, 2));
  const drawing = fittingDrawing(
    (scale) => levelDrawing(load, level, scale, units),
    (each, share) => each.width <= body.width && each.height <= body.height * share,
    (each) => list(each.height).length === 1,
    { largest: LARGEST_SHARE, least: LEAST_SHARE },
  );
  const turnY = drawingY + drawing.height + 3;
  const legendY = turnY + turn.heightMm + 1.5;
  const marks: SvgNode[] = [
    moved(body.x, body.y, figures.marks),
    drawnAt(drawing, body.x + (body.width - drawing.width) / 2, drawingY),
    moved(body.x, turnY, turn.marks),
    moved(body.x, legendY, legend.marks),
    moved(body.x + body.width - barLengthMm(units), legendY, [scaleBar(drawing.scale, units)]),
  ];
  const above = `Level ${level.number} of ${load.levels.length}, counted from the floor`;
  return list(drawing.height).map((part, i) => ({
    title: `Level ${level.number}${i === 0 ? "" : ", continued"}`,
    above,
    beside: `${level.shelf.kind.name} · ${countText(level.pieces.length)}`,
    marks: i === 0 ? [...marks, ...part] : part,
  }));
}

const countText = (count: number): string => (count === 0 ? "no pieces" : `${count} piece${count === 1 ? "" : "s"}`);

function levelFigures(level: SheetLevel, units: LengthUnits): Figure[] {
  const length = (mm: number): string => formatLength(mm, units);
  const posts = (all: SheetLevel["postsOn"]): string => (all.length === 0 ? "none" : postsFigure(all, units));
  return [
    { figure: length(level.shelf.topMm), words: "its face above the floor" },
    { figure: length(level.clearMm), words: level.underLid ? "clear to the lid" : "clear to the next shelf" },
    { figure: posts(level.postsUnder), words: "posts beneath it" },
    { figure: posts(level.postsOn), words: "posts to stand on it" },
  ];
}

/** How to lay the page the right way round: by what shows in the kiln's wall. */
function turnWords(load: SheetLoad): string {
  const { probes, spyholes } = load.request.kiln;
  const [sign] = [...probes, ...spyholes];
  const turn = sign
    ? `Turn the page until it has the ${sign.name} at ${clockText(sign.angleDeg)}`
    : "Keep one way round for the whole load";
  return `12 o’clock is the far side of the kiln. ${turn}.`;
}

function occurring(load: SheetLoad, level: SheetLevel): Parameters<typeof levelLegend>[0] {
  const { probes, spyholes } = load.request.kiln;
  return {
    postsOn: level.postsOn.length > 0,
    postsUnder: level.postsUnder.length > 0,
    cookies: level.pieces.some(({ piece }) => piece.ware.cookie),
    feet: level.pieces.some(({ piece }) => (piece.ware.profile?.[0]?.[1] ?? 0) > 0),
    probeHere: probes.some((probe) => looksIn(level, probe.heightMm)),
    probeElsewhere: probes.some((probe) => !looksIn(level, probe.heightMm)),
    open: spyholes.some((hole) => hole.open && looksIn(level, hole.heightMm)),
    plugged: spyholes.some((hole) => !hole.open && looksIn(level, hole.heightMm)),
  };
}

/** A row of the list: number, name, place, and beneath them what else she must know. */
function pieceRow(numbered: NumberedPiece, widthMm: number, units: LengthUnits): Block {
  const { piece, number } = numbered;
  const room = widthMm - LIST_INDENT_MM;
  const place = placeText(numbered, units);
  const placeWidth = textWidthMm(place, SIZES.body, "regular");
  const beside = textWidthMm(piece.ware.name, SIZES.body, "bold") + placeWidth + 3 <= room;
  const lines = paragraph(piece.ware.name, room, { weight: "bold" });
  if (!beside) lines.push(...paragraph(place, room));
  const detail = detailText(numbered, units).join(" · ");
  if (detail !== "") lines.push(...paragraph(detail, room, { sizePt: SIZES.small, fill: COLOURS.quiet }));
  const inner = together(lines);
  const text = String(number);
  const row: Block = {
    heightMm: inner.heightMm,
    withNext: false,
    marks: [
      tickBox(0, 0.7),
      textLine(LIST_INDENT_MM - 2, mmOfPoints(NUMBER_PT) * 0.93, text, {
        sizePt: textWidthMm(text, NUMBER_PT, "bold") > 8 ? SIZES.body : NUMBER_PT,
        weight: "bold",
        anchor: "end",
        fill: COLOURS.accent,
      }),
      moved(LIST_INDENT_MM, 0, inner.marks),
      ...(beside ? [textLine(widthMm, mmOfPoints(SIZES.body), place, { anchor: "end" })] : []),
    ],
  };
  const ruled = marked([space(0.9)], ruleMark(widthMm));
  return together([row, ...ruled, space(0.7)]);
}

const ruleMark = (widthMm: number): SvgNode =>
  element("line", { x1: 0, y1: 0.7, x2: widthMm, y2: 0.7, stroke: COLOURS.line, "stroke-width": LINES.hair });

/** `4 o'clock, 22 mm in`: its direction from the kiln's middle, and how far its edge stands inside the shelf's. */
function placeText({ direction, insideMm }: NumberedPiece, units: LengthUnits): string {
  const edge = formatLength(Math.abs(insideMm), units);
  if (insideMm < -0.5) return `${direction}, ${edge} over the edge`;
  if (insideMm < 1) return `${direction}, at the edge`;
  // "1/4 in in" would be read twice.
  return `${direction}, ${edge} ${units === "inches" ? "inside" : "in"}`;
}

function detailText({ piece, handle, spout }: NumberedPiece, units: LengthUnits): string[] {
  const { ware } = piece;
  const fired = [ware.glaze, ware.cone && `cone ${ware.cone}`].filter(Boolean).join(", ");
  return [
    handle && `handle to ${handle}`,
    spout && `spout to ${spout}`,
    ware.cookie && `on a cookie, ${formatLength(ware.cookie.diameterMm, units)} across`,
    fired,
  ].filter((text): text is string => Boolean(text));
}
