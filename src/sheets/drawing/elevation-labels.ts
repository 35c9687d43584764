import { formatLength, type LengthUnits } from "../../measures/length.ts";
import { COLOURS, LINES, lineHeightMm, mmOfPoints, SIZES, type TextStyle, textLine } from "../page/sheet-style.ts";
import { shortenedText, textWidthMm, wrapText } from "../page/text-measure.ts";
import { postsFigure } from "../post-words.ts";
import { postsOnFloor, type SheetLoad } from "../sheet-load.ts";
import { spread } from "../spread.ts";
import { element, type SvgNode } from "../svg-writer.ts";
import type { LabelBox } from "./drawing.ts";
import type { ToPaper } from "./to-paper.ts";

/** How wide words beside the drawing may be. */
const HEIGHTS_ROOM_MM = 26;
const CLEAR_ROOM_MM = 34;
const KINK_MM = 4;

interface Note {
  /** Where on the drawing it points. */
  readonly y: number;
  readonly lines: readonly { readonly text: string; readonly style: TextStyle }[];
}

interface Labelled {
  readonly marks: SvgNode[];
  readonly labels: LabelBox[];
}

const small = (text: string, fill: string = COLOURS.quiet): Note["lines"][number] => ({
  text,
  style: { sizePt: SIZES.small, fill },
});
const strong = (text: string): Note["lines"][number] => ({ text, style: { sizePt: SIZES.small, weight: "bold" } });

/** Heights above the floor, left of the drawing: every shelf's face, the lid, probes and spyholes. */
export function heightLabels(load: SheetLoad, paper: ToPaper, edge: number, units: LengthUnits): Labelled {
  const { chamber, probes, spyholes } = load.request.kiln;
  const height = (mm: number): string => formatLength(mm, units);
  const fitting = (thing: { name: string; heightMm: number }, open = ""): Note => ({
    y: paper.y(thing.heightMm),
    lines: [
      small(shortenedText(`${thing.name}${open}`, HEIGHTS_ROOM_MM, SIZES.small), COLOURS.accent),
      small(height(thing.heightMm), COLOURS.accent),
    ],
  });
  const notes: Note[] = [
    { y: paper.y(chamber.depthMm), lines: [small(`lid ${height(chamber.depthMm)}`)] },
    { y: 0, lines: [small("floor")] },
    ...load.levels.map(({ shelf }) => ({ y: paper.y(shelf.topMm), lines: [strong(height(shelf.topMm))] })),
    ...probes.map((probe) => fitting(probe)),
    ...spyholes.map((hole) => fitting(hole)),
  ];
  return column(notes, edge, -1);
}

/** Clear heights and posts, right of the drawing: a dimension line for each gap between floor, shelves and lid. */
export function clearLabels(load: SheetLoad, paper: ToPaper, edge: number, units: LengthUnits): Labelled {
  const x = edge + 3;
  const lowest = Math.min(load.request.kiln.chamber.depthMm, ...load.scene.shelves.map((shelf) => shelf.undersideMm));
  const gaps = [
    { name: "Floor", fromMm: 0, clearMm: lowest, posts: postsOnFloor(load), lid: load.levels.length === 0 },
    ...load.levels.map((level) => ({
      name: `Level ${level.number}`,
      fromMm: level.shelf.topMm,
      clearMm: level.clearMm,
      posts: level.postsOn,
      lid: level.underLid,
    })),
  ];
  const notes = gaps.map(({ name, fromMm, clearMm, posts, lid }): Note => {
    const words = [`${formatLength(clearMm, units)} clear${lid ? " to the lid" : ""}`];
    if (posts.length > 0) words.push(`posts ${postsFigure(posts, units)}`);
    return {
      y: paper.y(fromMm + clearMm / 2),
      lines: [
        strong(name),
        ...words.flatMap((text) => wrapText(text, CLEAR_ROOM_MM, SIZES.small).map((line) => small(line))),
      ],
    };
  });
  const dimensions = gaps.flatMap(({ fromMm, clearMm }) => dimension(x, paper.y(fromMm), paper.y(fromMm + clearMm)));
  const words = column(notes, x + 0.8, 1);
  return { marks: [...dimensions, ...words.marks], labels: words.labels };
}

function dimension(x: number, from: number, to: number): SvgNode[] {
  const stroke = { stroke: COLOURS.quiet, "stroke-width": LINES.hair };
  return [
    element("line", { x1: x, y1: from, x2: x, y2: to, ...stroke }),
    ...[from, to].map((y) => element("line", { x1: x - 1, y1: y, x2: x + 1, y2: y, ...stroke })),
  ];
}

/** Notes one under another beside the drawing, each joined to its place by a line. */
function column(notes: readonly Note[], edge: number, side: -1 | 1): Labelled {
  const rising = [...notes].sort((a, b) => a.y - b.y);
  const rowMm = lineHeightMm(SIZES.small);
  const sizes = rising.map((note) => note.lines.length * rowMm + 1.2);
  const places = spread(
    rising.map((note) => note.y),
    sizes,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  );
  const marks: SvgNode[] = [];
  const labels: LabelBox[] = [];
  rising.forEach((note, i) => {
    const middle = places[i] as number;
    const x = edge + side * (KINK_MM + 1);
    const tail = edge + side * KINK_MM;
    marks.push(
      element("path", {
        d: `M ${edge} ${note.y} L ${edge + side * 1} ${note.y} L ${edge + side * (KINK_MM - 1)} ${middle} L ${tail} ${middle}`,
        fill: "none",
        stroke: COLOURS.quiet,
        "stroke-width": LINES.hair,
      }),
    );
    const first = middle - (note.lines.length * rowMm) / 2;
    note.lines.forEach(({ text, style }, row) => {
      const width = textWidthMm(text, SIZES.small, style.weight ?? "regular");
      const y = first + row * rowMm;
      labels.push({ text, x: side < 0 ? x - width : x, y, width, height: rowMm });
      marks.push(
        textLine(x, y + mmOfPoints(SIZES.small) * 1.02, text, { ...style, anchor: side < 0 ? "end" : "start" }),
      );
    });
  });
  return { marks, labels };
}
