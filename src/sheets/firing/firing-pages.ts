import type { KeyInLine } from "../../firing/programme/key-in.ts";
import { formatTemperature, type TemperatureUnits } from "../../measures/temperature.ts";
import { cautionPages } from "../cautions-page.ts";
import { drawnAt } from "../drawing/drawing.ts";
import { type Block, flow, flowLevel, heading, heightOf, paragraph, smallHeading, space } from "../page/flow.ts";
import {
  bodyFrame,
  columnsOf,
  drawPage,
  type Frame,
  type PageContent,
  type Paper,
  type SheetPage,
} from "../page/sheet-page.ts";
import { COLOURS, LINES, lineHeightMm, mmOfPoints, SIZES, textLine } from "../page/sheet-style.ts";
import { element, moved, type SvgNode } from "../svg-writer.ts";
import { type FiringChart, firingChart } from "./firing-chart.ts";

/** Everything the firing pages show. Times in minutes from the start, or hours where said. */
export interface FiringSheet {
  readonly kiln: string;
  readonly programmeName: string;
  readonly keyIn: readonly KeyInLine[];
  readonly chart: FiringChart;
  /** From the start to the moment the kiln shuts off. */
  readonly hours: number;
  readonly kWh: number;
  readonly cost: string | null;
  readonly peakC: number;
  /** One row a level, from the floor up: what it is expected to get. */
  readonly levels: readonly {
    readonly level: number;
    readonly peakC: number;
    readonly cone: string;
    readonly offsetC: number;
  }[];
  /** Hours from the start until the kiln is under each temperature in °C; null where it never gets there. */
  readonly coolHours: readonly { readonly tempC: number; readonly hours: number | null; readonly means: string }[];
  /** When to look through the spyhole, and for what. */
  readonly looks: readonly { readonly minutes: number; readonly what: string }[];
  /** Where the kiln falls behind the programme or stalls. */
  readonly troubles: readonly string[];
  readonly advice: readonly string[];
  readonly notes: readonly string[];
}

/**
 * The pages that carry the firing: what to key in, what to expect and when to look. The cautions are a page of their own
 * (`cautionPages`), which belongs with them.
 *
 * @param options degrees for every table and the chart
 */
export function firingPages(
  firing: FiringSheet,
  options: { readonly paper: Paper; readonly units: TemperatureUnits },
): PageContent[] {
  const { paper, units } = options;
  const frame = bodyFrame(paper);
  const chart = firingChart(firing.chart, frame.width, 96, units);
  const key: SvgNode = moved(frame.x, frame.y + 99, chartKey());
  const table: Frame = { ...frame, y: frame.y + 108, height: frame.height - 108 };
  const [first = [], ...more] = flow(programmeBlocks(firing, table.width, units), [table], [frame]);
  const columns = columnsOf(frame, 2);
  const width = (columns[0] as Frame).width;
  const expect = flowLevel(expectBlocks(firing, width, units), columns, columns);
  return [
    page("The programme", [drawnAt(chart, frame.x, frame.y), key, ...first]),
    ...more.map((marks) => page("The programme", marks)),
    ...expect.map((marks) => page("What to expect", marks)),
  ];

  function page(title: string, marks: readonly SvgNode[]): PageContent {
    return { title, above: `${firing.kiln} · the firing`, beside: firing.programmeName, marks };
  }
}

/** The firing's pages and the cautions as a sheet of their own. */
export function firingSheetPages(
  firing: FiringSheet,
  options: { readonly paper: Paper; readonly units: TemperatureUnits },
): SheetPage[] {
  const { paper, units } = options;
  const contents = [...firingPages(firing, options), ...cautionPages(paper, units === "F" ? "inches" : "metric")];
  return contents.map((content, i) => drawPage(content, paper, firing.kiln, i + 1, contents.length));
}

function chartKey(): SvgNode[] {
  const items: readonly (readonly [string, string, number, string | undefined])[] = [
    ["what the probe should read", COLOURS.accent, LINES.bold, undefined],
    ["the programme", COLOURS.quiet, LINES.fine, "1.6 1.2"],
    ["each level's ware", COLOURS.accentPale, LINES.firm, undefined],
  ];
  return items.flatMap(([text, colour, width, dashes], i) => [
    element("line", {
      x1: i * 58,
      x2: i * 58 + 8,
      y1: 0,
      y2: 0,
      stroke: colour,
      "stroke-width": width,
      "stroke-dasharray": dashes,
    }),
    textLine(i * 58 + 10, 1.1, text, { sizePt: SIZES.small, fill: COLOURS.quiet }),
  ]);
}

function programmeBlocks(firing: FiringSheet, widthMm: number, units: TemperatureUnits): Block[] {
  const columns = [0, 12, 40, 64, 88];
  const row = (cells: readonly string[], bold: boolean): SvgNode[] =>
    cells.map((cell, i) =>
      textLine(
        columns[i] as number,
        mmOfPoints(SIZES.body),
        cell,
        bold ? { weight: "bold", fill: COLOURS.accent } : {},
      ),
    );
  const rows = firing.keyIn.flatMap((line): Block[] => {
    const rate = line.rate === null ? "full power" : `${line.rate} °${units}/h`;
    const why = paragraph(line.reason === "" ? line.stage : line.reason, widthMm - 88, { sizePt: SIZES.small }, 0);
    const height = Math.max(lineHeightMm(SIZES.body) + 1, heightOf(why) + 2);
    let y = 0.4;
    const marks: SvgNode[] = row(
      [String(line.segment), rate, `${line.target} °${units}`, line.holdMin > 0 ? `${line.holdMin} min` : "none"],
      false,
    );
    for (const block of why) {
      marks.push(moved(88, y, block.marks));
      y += block.heightMm;
    }
    marks.push(
      element("line", { x1: 0, x2: widthMm, y1: height, y2: height, stroke: COLOURS.line, "stroke-width": LINES.hair }),
    );
    return [{ heightMm: height + 1.2, withNext: false, marks }];
  });
  return [
    ...heading("Key in", widthMm),
    { heightMm: lineHeightMm(SIZES.body) + 1, withNext: true, marks: row(["", "rate", "to", "hold", "why"], true) },
    ...rows,
  ];
}

function expectBlocks(firing: FiringSheet, widthMm: number, units: TemperatureUnits): Block[] {
  const lines = (texts: readonly string[]): Block[] =>
    texts.flatMap((text) => [...paragraph(text, widthMm), space(1.2)]);
  const section = (title: string, texts: readonly string[]): Block[] =>
    texts.length === 0 ? [] : [...heading(title, widthMm), ...lines(texts), space(4)];
  return [
    ...section("In short", [
      `Shuts off ${hoursText(firing.hours)} after the start, near ${formatTemperature(firing.peakC, units)}.`,
      `Uses about ${firing.kWh.toFixed(1)} kWh${firing.cost === null ? "" : `: ${firing.cost}`}.`,
    ]),
    ...section(
      "When to look",
      firing.looks.map((look) => `${hoursText(look.minutes / 60)}: ${look.what}`),
    ),
    ...section(
      "When it is cool",
      firing.coolHours.map(({ tempC, hours, means }) =>
        hours === null
          ? `Under ${formatTemperature(tempC, units)} later than was reckoned. ${means}`
          : `Under ${formatTemperature(tempC, units)} ${hoursText(hours)} after the start. ${means}`,
      ),
    ),
    ...section(
      "What each level should get",
      [...firing.levels]
        .reverse()
        .map(
          (level) =>
            `Level ${level.level + 1}: ${level.cone}, peak ${formatTemperature(level.peakC, units)}; ${offsetText(level.offsetC, units)}.`,
        ),
    ),
    ...section("Where the kiln cannot follow", firing.troubles),
    ...section("Tried in this kiln with this load", firing.advice),
    ...(firing.notes.length ? smallHeading("Taken for granted", widthMm) : []),
    ...firing.notes.flatMap((note) => [...paragraph(note, widthMm, { sizePt: SIZES.small }), space(1)]),
    space(3),
    ...paragraph("Reckoned, not measured: witness cones have the last word.", widthMm, { weight: "bold" }),
  ];
}

const hoursText = (hours: number): string => {
  const minutes = Math.round(hours * 60);
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
};

function offsetText(offsetC: number, units: TemperatureUnits): string {
  const degrees = Math.round(units === "F" ? (offsetC * 9) / 5 : offsetC);
  if (degrees === 0) return "as much heat work as at the probe";
  return `as if ${Math.abs(degrees)} °${units} ${degrees > 0 ? "hotter" : "cooler"} than at the probe`;
}
