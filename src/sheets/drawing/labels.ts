import { COLOURS, capHeightMm, centredText, LINES, lineHeightMm, type TextWeight } from "../page/sheet-style.ts";
import { textWidthMm } from "../page/text-measure.ts";
import { spread } from "../spread.ts";
import { element, type SvgNode } from "../svg-writer.ts";
import { type LabelBox, overlap } from "./drawing.ts";

/** One line of a label. */
export interface LabelLine {
  readonly text: string;
  readonly sizePt: number;
  readonly weight: TextWeight;
}

/** What wants a label: where it stands, how much room it has about its middle, and what could be written, best first. */
export interface LabelWish {
  readonly x: number;
  readonly y: number;
  readonly roomMm: number;
  readonly choices: readonly (readonly LabelLine[])[];
  readonly fill: string;
  /** What is written at the end of a leader line where nothing fits. */
  readonly outside: LabelLine;
}

/** Where leader lines may end: a column on each side. Millimetres of paper. */
export interface LeaderColumns {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const AIR_MM = 0.5;
const LEAST_SIZE_PT = 4;

/**
 * Writes every label so that no two overlap: inside its thing where one of its choices fits, else at the end of a
 * leader line in the nearer column. A column too full for its type size uses a smaller one.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  columns: LeaderColumns,
): { marks: SvgNode[]; labels: LabelBox[]; outside: number } {
  const marks: SvgNode[] = [];
  const labels: LabelBox[] = [];
  const outside: LabelWish[] = [];
  for (const wish of wishes) {
    const choice = wish.choices.find((lines) => {
      const boxes = boxesOf(wish, lines);
      return boxes.every((box) => insideRoom(wish, box) && !labels.some((other) => overlap(aired(box), other)));
    });
    if (!choice) {
      outside.push(wish);
      continue;
    }
    for (const [i, box] of boxesOf(wish, choice).entries()) {
      const line = choice[i] as LabelLine;
      labels.push(box);
      marks.push(centredText(wish.x, box.y + box.height / 2, line.text, { ...line, fill: wish.fill }));
    }
  }
  for (const side of [-1, 1] as const) {
    const here = outside.filter((wish) => wish.x < 0 === side < 0).sort((a, b) => a.y - b.y);
    const column = leaders(here, side, columns);
    marks.push(...column.marks);
    labels.push(...column.labels);
  }
  return { marks, labels, outside: outside.length };
}

/** The widest a leader's words are. */
export const outsideWidthMm = (wishes: readonly LabelWish[]): number =>
  Math.max(0, ...wishes.map(({ outside }) => textWidthMm(outside.text, outside.sizePt, outside.weight)));

function boxesOf(wish: LabelWish, lines: readonly LabelLine[]): LabelBox[] {
  const heights = lines.map((line) =>
    lines.length === 1 ? capHeightMm(line.sizePt) * 1.3 : lineHeightMm(line.sizePt),
  );
  let y = wish.y - heights.reduce((sum, height) => sum + height, 0) / 2;
  return lines.map((line, i) => {
    const width = textWidthMm(line.text, line.sizePt, line.weight);
    const box = { text: line.text, x: wish.x - width / 2, y, width, height: heights[i] as number };
    y += box.height;
    return box;
  });
}

/** Whether all four corners lie within the round room. */
const insideRoom = (wish: LabelWish, box: LabelBox): boolean =>
  Math.hypot(box.width / 2, Math.max(Math.abs(box.y - wish.y), Math.abs(box.y + box.height - wish.y))) <= wish.roomMm;

const aired = (box: LabelBox): LabelBox => ({
  ...box,
  x: box.x - AIR_MM,
  y: box.y - AIR_MM / 2,
  width: box.width + 2 * AIR_MM,
  height: box.height + AIR_MM,
});

function leaders(
  wishes: readonly LabelWish[],
  side: -1 | 1,
  columns: LeaderColumns,
): { marks: SvgNode[]; labels: LabelBox[] } {
  const room = columns.bottom - columns.top;
  const needed = wishes.reduce((sum, wish) => sum + lineHeightMm(wish.outside.sizePt), 0);
  const shrink = Math.min(1, room / Math.max(needed, 1e-9));
  const sizes = wishes.map((wish) => Math.max(LEAST_SIZE_PT, wish.outside.sizePt * shrink));
  const places = spread(
    wishes.map((wish) => wish.y),
    sizes.map(lineHeightMm),
    columns.top,
    columns.bottom,
  );
  const marks: SvgNode[] = [];
  const labels: LabelBox[] = [];
  const x = side < 0 ? columns.left : columns.right;
  wishes.forEach((wish, i) => {
    const y = places[i] as number;
    const sizePt = sizes[i] as number;
    const { text, weight } = wish.outside;
    const width = textWidthMm(text, sizePt, weight);
    const height = lineHeightMm(sizePt);
    labels.push({ text, x: side < 0 ? x - width : x, y: y - height / 2, width, height });
    const stroke = { stroke: COLOURS.ink, "stroke-width": LINES.hair, fill: "none" };
    marks.push(
      element("path", { d: `M ${wish.x} ${wish.y} L ${x - side * 3} ${y} L ${x - side * 0.8} ${y}`, ...stroke }),
      element("circle", { cx: wish.x, cy: wish.y, r: 0.45, fill: COLOURS.ink }),
      centredText(x, y, text, { sizePt, weight, anchor: side < 0 ? "end" : "start", fill: COLOURS.ink }),
    );
  });
  return { marks, labels };
}
