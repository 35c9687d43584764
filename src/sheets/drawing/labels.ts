import { radians } from "../../measures/angle.ts";
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
  /** A circle of this radius about its middle is its own. */
  readonly roomMm: number;
  /** A circle that holds all of it: nothing else is written there. */
  readonly reachMm: number;
  readonly choices: readonly (readonly LabelLine[])[];
  readonly fill: string;
  /** What is written beside it, or at the end of a leader line, where nothing fits inside; null where it may go unwritten. */
  readonly outside: LabelLine | null;
}

type OutsideWish = LabelWish & { readonly outside: LabelLine };
const hasOutside = (wish: LabelWish): wish is OutsideWish => wish.outside !== null;

/** Where leader lines may end: a column on each side. Millimetres of paper. */
export interface LeaderColumns {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const AIR_MM = 0.5;
const SMALLER_PT = [7.5, 6, 5];
const CLOSE_MM = 0.8;
const FAR_MM = 4;
const BESIDE_DEG = [0, 180, 90, 270, 45, 135, 315, 225];

/** Labels as drawn: leader lines go under the things they pass, words over everything. */
export interface PlacedLabels {
  readonly leaders: SvgNode[];
  readonly words: SvgNode[];
  readonly labels: LabelBox[];
  readonly outside: number;
}

/**
 * Writes every label so that no two overlap: inside its thing where one of its choices fits, else close beside it where
 * there is room, else at the end of a leader line in the nearer column. A column too full for its type size uses a
 * smaller one.
 *
 * @param mayStand whether words may stand beside a thing there, for all the drawing knows besides the things themselves
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  columns: LeaderColumns,
  mayStand: (box: LabelBox) => boolean,
): PlacedLabels {
  const leaderMarks: SvgNode[] = [];
  const words: SvgNode[] = [];
  const labels: LabelBox[] = [];
  const free = (box: LabelBox): boolean => !labels.some((other) => overlap(aired(box), other));
  const homeless = wishes.filter((wish) => {
    const choice = wish.choices.find((lines) =>
      boxesOf(wish, lines).every((box) => insideRoom(wish, box) && free(box)),
    );
    if (!choice) return true;
    for (const [i, box] of boxesOf(wish, choice).entries()) {
      const line = choice[i] as LabelLine;
      labels.push(box);
      words.push(centredText(wish.x, box.y + box.height / 2, line.text, { ...line, fill: wish.fill }));
    }
    return false;
  });
  const writeBeside = (wish: OutsideWish, sizePt: number): boolean => {
    const line = { ...wish.outside, sizePt };
    const beside = besides(wish, line).find(
      (box) => free(box) && !wishes.some((other) => touches(aired(box), other)) && mayStand(box),
    );
    if (!beside) return false;
    labels.push(beside);
    if (beside.far) leaderMarks.push(shortLine(wish, beside));
    words.push(centredText(beside.x + beside.width / 2, beside.y + beside.height / 2, beside.text, line));
    return true;
  };
  let outside = homeless.filter(hasOutside).filter((wish) => !writeBeside(wish, wish.outside.sizePt));
  // Only where the columns would be too full is anything written smaller.
  for (const sizePt of SMALLER_PT) {
    if (columnsFit(outside, columns)) break;
    outside = outside.filter((wish) => !writeBeside(wish, sizePt));
  }
  for (const side of [-1, 1] as const) {
    const here = outside.filter((wish) => wish.x < 0 === side < 0).sort((a, b) => a.y - b.y);
    const column = leaders(here, side, columns);
    leaderMarks.push(...column.lines);
    words.push(...column.words);
    labels.push(...column.labels);
  }
  return { leaders: leaderMarks, words, labels, outside: outside.length };
}

/** Places beside a thing, best first: close to it, then a little way off with a short line. */
function besides({ x, y, reachMm }: OutsideWish, line: LabelLine): (LabelBox & { far: boolean })[] {
  const width = textWidthMm(line.text, line.sizePt, line.weight);
  const height = capHeightMm(line.sizePt) * 1.3;
  return [CLOSE_MM, FAR_MM].flatMap((gap) =>
    BESIDE_DEG.map((deg) => {
      const dx = Math.cos(radians(deg));
      const dy = Math.sin(radians(deg));
      const middleX = x + dx * (reachMm + gap) + (Math.abs(dx) < 1e-9 ? 0 : (Math.sign(dx) * width) / 2);
      const middleY = y + dy * (reachMm + gap) + (Math.abs(dy) < 1e-9 ? 0 : (Math.sign(dy) * height) / 2);
      const box = { x: middleX - width / 2, y: middleY - height / 2, width, height };
      return { text: line.text, ...box, far: gap === FAR_MM };
    }),
  );
}

const columnsFit = (wishes: readonly OutsideWish[], columns: LeaderColumns): boolean =>
  [true, false].every(
    (left) =>
      wishes
        .filter((wish) => wish.x < 0 === left)
        .reduce((sum, { outside }) => sum + lineHeightMm(outside.sizePt), 0) <=
      columns.bottom - columns.top,
  );

/** From a thing's middle to the nearest place of the words beside it. */
function shortLine({ x, y }: LabelWish, box: LabelBox): SvgNode {
  const toX = Math.max(box.x, Math.min(box.x + box.width, x));
  const toY = Math.max(box.y, Math.min(box.y + box.height, y));
  return element("line", { x1: x, y1: y, x2: toX, y2: toY, stroke: COLOURS.ink, "stroke-width": LINES.hair });
}

/** Whether a box comes within the circle that holds a thing. */
function touches(box: LabelBox, { x, y, reachMm }: LabelWish): boolean {
  const nearestX = Math.max(box.x, Math.min(box.x + box.width, x));
  const nearestY = Math.max(box.y, Math.min(box.y + box.height, y));
  return Math.hypot(nearestX - x, nearestY - y) < reachMm;
}

/** The widest a leader's words are. */
export const outsideWidthMm = (wishes: readonly LabelWish[]): number =>
  Math.max(
    0,
    ...wishes.filter(hasOutside).map(({ outside }) => textWidthMm(outside.text, outside.sizePt, outside.weight)),
  );

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
  wishes: readonly OutsideWish[],
  side: -1 | 1,
  columns: LeaderColumns,
): { lines: SvgNode[]; words: SvgNode[]; labels: LabelBox[] } {
  const room = columns.bottom - columns.top;
  const needed = wishes.reduce((sum, wish) => sum + lineHeightMm(wish.outside.sizePt), 0);
  const shrink = Math.min(1, room / Math.max(needed, 1e-9));
  const sizes = wishes.map((wish) => wish.outside.sizePt * shrink);
  const places = spread(
    wishes.map((wish) => wish.y),
    sizes.map(lineHeightMm),
    columns.top,
    columns.bottom,
  );
  const lines: SvgNode[] = [];
  const words: SvgNode[] = [];
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
    const elbow = `L ${x - side * 3} ${y} L ${x - side * 0.8} ${y}`;
    lines.push(element("path", { d: `M ${wish.x} ${wish.y} ${elbow}`, ...stroke }));
    words.push(
      element("circle", { cx: wish.x, cy: wish.y, r: 0.45, fill: COLOURS.ink }),
      centredText(x, y, text, { sizePt, weight, anchor: side < 0 ? "end" : "start", fill: COLOURS.ink }),
    );
  });
  return { lines, words, labels };
}
