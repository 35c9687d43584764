import type { LengthUnits } from "../measures/length.ts";
import { loadingStages } from "./loading-steps.ts";
import { type Block, flow, heading, marked, paragraph, space } from "./page/flow.ts";
import { bodyFrame, columnsOf, type PageContent, type Paper } from "./page/sheet-page.ts";
import { COLOURS, SIZES } from "./page/sheet-style.ts";
import { tickBox } from "./page/tick-box.ts";
import type { SheetLoad } from "./sheet-load.ts";

const INDENT_MM = 7;

/** The loading order, from the floor up, a box to tick at every step. */
export function orderPages(load: SheetLoad, paper: Paper, units: LengthUnits): PageContent[] {
  const columns = columnsOf(bodyFrame(paper), 2, 10);
  const width = columns[0]?.width ?? 0;
  const blocks = loadingStages(load, units).flatMap(({ title, steps }) => [
    ...heading(title, width),
    ...steps.flatMap((step) => stepBlocks(step.text, step.note ?? "", width)),
    space(3),
  ]);
  return flow(blocks, columns, columns).map((marks, i) => ({
    title: i === 0 ? "Loading order" : "Loading order, continued",
    above: "From the floor up",
    marks,
  }));
}

function stepBlocks(text: string, note: string, width: number): Block[] {
  const lines = paragraph(text, width, {}, INDENT_MM);
  const notes = note === "" ? [] : paragraph(note, width, { sizePt: SIZES.small, fill: COLOURS.quiet }, INDENT_MM);
  const all = [
    ...lines.map((line) => ({ ...line, withNext: true })),
    ...notes.map((line) => ({ ...line, withNext: true })),
  ];
  const [last] = all.splice(-1);
  return [...marked([...all, { ...(last as Block), withNext: false }], tickBox(0, 0.7)), space(1.3)];
}
