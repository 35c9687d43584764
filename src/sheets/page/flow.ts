import { group, moved, type SvgNode } from "../svg-writer.ts";
import type { Frame } from "./sheet-page.ts";
import { COLOURS, lineHeightMm, mmOfPoints, SIZES, type TextStyle, textLine } from "./sheet-style.ts";
import { wrapText } from "./text-measure.ts";

/** A piece of a page that is never cut: a line, a row, a heading. Drawn from its top left corner. */
export interface Block {
  readonly heightMm: number;
  /** True where it must stand above the next block in the same column, as a heading does. */
  readonly withNext: boolean;
  readonly marks: readonly SvgNode[];
}

/** Empty space between blocks; dropped at the head of a column. */
export const space = (heightMm: number): Block => ({ heightMm, withNext: false, marks: [] });

/** Text broken to a width, a block a line, so that it may run on into the next column. Its first two lines stay together. */
export function paragraph(text: string, widthMm: number, style: TextStyle = {}, indentMm = 0): Block[] {
  const sizePt = style.sizePt ?? SIZES.body;
  const lines = wrapText(text, widthMm - indentMm, sizePt, style.weight ?? "regular");
  return lines.map((line, i) => ({
    heightMm: lineHeightMm(sizePt),
    withNext: i === 0 && lines.length > 1,
    marks: [textLine(indentMm, mmOfPoints(sizePt), line, style)],
  }));
}

/** A heading that stays with what follows it. */
export function heading(text: string, widthMm: number): Block[] {
  const lines = paragraph(text, widthMm, { sizePt: SIZES.heading, weight: "bold" });
  return [...lines.map((line) => ({ ...line, withNext: true })), { heightMm: 1.2, withNext: true, marks: [] }];
}

/** A small heading in the accent colour. */
export const smallHeading = (text: string, widthMm: number): Block[] =>
  paragraph(text, widthMm, { weight: "bold", fill: COLOURS.accent }).map((line) => ({ ...line, withNext: true }));

/** The same blocks with marks of its own added to the first: a tick box, a bullet. */
export const marked = (blocks: readonly Block[], ...marks: SvgNode[]): Block[] =>
  blocks.map((block, i) => (i === 0 ? { ...block, marks: [...marks, ...block.marks] } : block));

/** Blocks as one that is never cut. */
export function together(blocks: readonly Block[]): Block {
  let y = 0;
  const marks: SvgNode[] = [];
  for (const block of blocks) {
    if (block.marks.length > 0) marks.push(moved(0, y, block.marks));
    y += block.heightMm;
  }
  return { heightMm: y, withNext: false, marks: [group(marks)] };
}

/**
 * Sets blocks one under another through columns and pages. A block taller than a whole later column stands there alone.
 *
 * @param first the first page's columns, in order; may be none
 * @param later the columns of every page after it
 * @returns for each page, what to draw
 */
export function flow(blocks: readonly Block[], first: readonly Frame[], later: readonly Frame[]): SvgNode[][] {
  const pages: SvgNode[][] = [[]];
  const queue = [...first];
  let frame: Frame | undefined = queue.shift();
  let y = frame?.y ?? 0;
  const nextColumn = (): void => {
    if (queue.length === 0) {
      queue.push(...later);
      pages.push([]);
    }
    frame = queue.shift() as Frame;
    y = frame.y;
  };
  const fits = (height: number): boolean => frame !== undefined && y + height <= frame.y + frame.height + 1e-6;
  const nothingBetter = (): boolean => frame !== undefined && y === frame.y && pages.length > 1;
  for (let at = 0; at < blocks.length; ) {
    let end = at;
    while (end < blocks.length - 1 && blocks[end]?.withNext) end += 1;
    const run = blocks.slice(at, end + 1);
    // Empty space is never a reason for a new column.
    if (!fits(heightOf(run)) && run.every((block) => block.marks.length === 0)) {
      at = end + 1;
      continue;
    }
    while (!fits(heightOf(run)) && !nothingBetter()) nextColumn();
    for (const block of run) {
      // A run taller than a whole column is cut after all.
      while (!fits(block.heightMm) && !nothingBetter()) nextColumn();
      if (block.marks.length === 0 && y === frame?.y) continue;
      (pages.at(-1) as SvgNode[]).push(moved((frame as Frame).x, y, block.marks));
      y += block.heightMm;
    }
    at = end + 1;
  }
  return pages;
}

/** The same through columns cut as short as lets everything stand on one page, so that they end level; else full columns. */
export function flowLevel(blocks: readonly Block[], first: readonly Frame[], later: readonly Frame[]): SvgNode[][] {
  const fullest = Math.max(0, ...first.map((frame) => frame.height));
  const full = flow(blocks, first, later);
  if (full.length > 1) return full;
  let low = 0;
  let high = fullest;
  const cut = (height: number): Frame[] => first.map((frame) => ({ ...frame, height: Math.min(frame.height, height) }));
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (flow(blocks, cut(middle), later).length > 1) low = middle;
    else high = middle;
  }
  return flow(blocks, cut(high), later);
}

/** How tall blocks stand in one column. */
export const heightOf = (blocks: readonly Block[]): number => blocks.reduce((sum, block) => sum + block.heightMm, 0);
