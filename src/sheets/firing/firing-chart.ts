import { fahrenheitFromCelsius, type TemperatureUnits } from "../../measures/temperature.ts";
import type { Drawing } from "../drawing/drawing.ts";
import { COLOURS, LINES, SIZES, textLine } from "../page/sheet-style.ts";
import { element, pathOf, type SvgNode } from "../svg-writer.ts";

/** A line of the chart: minutes and °C. */
export interface ChartLine {
  readonly name: string;
  readonly minutes: ArrayLike<number>;
  readonly tempC: ArrayLike<number>;
}

/** What a firing's chart shows. */
export interface FiringChart {
  readonly programme: ChartLine;
  /** What the probe is expected to read. */
  readonly probe: ChartLine;
  /** One for each level, from the floor up. */
  readonly levels: readonly ChartLine[];
  readonly power: {
    readonly minutes: ArrayLike<number>;
    readonly powerW: ArrayLike<number>;
    readonly fullW: number;
  } | null;
  readonly cones: readonly { readonly cone: string; readonly downAtMin: number; readonly tempC: number }[];
  /** Drawn up to here; the whole cooling would dwarf the rest. */
  readonly untilMin: number;
}

const AXIS_MM = 13;
const POWER_MM = 20;
const FOOT_MM = 14;

/** The chart of a firing: programme, expected readings by level, power beneath, cones where they fall. Millimetres of paper. */
export function firingChart(chart: FiringChart, widthMm: number, heightMm: number, units: TemperatureUnits): Drawing {
  const plotWidth = widthMm - AXIS_MM - 4;
  const plotHeight = heightMm - POWER_MM - FOOT_MM;
  const hottest = Math.max(100, ...[chart.programme, chart.probe, ...chart.levels].map((line) => most(line.tempC)));
  const stepC = units === "F" ? (500 * 5) / 9 : 200;
  const zeroC = units === "F" ? -17.78 : 0;
  const topC = zeroC + Math.ceil((hottest - zeroC) / stepC + 0.2) * stepC;
  const x = (minutes: number): number => AXIS_MM + (plotWidth * Math.min(minutes, chart.untilMin)) / chart.untilMin;
  const y = (tempC: number): number => 4 + plotHeight * (1 - (tempC - zeroC) / (topC - zeroC));
  const marks: SvgNode[] = [...temperatureGrid(), ...hourGrid()];
  if (chart.power) marks.push(...powerMarks(chart.power));
  for (const line of chart.levels) marks.push(curve(line, COLOURS.accentPale, LINES.firm));
  marks.push(curve(chart.programme, COLOURS.quiet, LINES.fine, "1.6 1.2"));
  marks.push(curve(chart.probe, COLOURS.accent, LINES.bold));
  marks.push(...coneMarks());
  return { scale: 1, left: 0, top: 0, width: widthMm, height: heightMm, marks, labels: [] };

  function temperatureGrid(): SvgNode[] {
    const lines: SvgNode[] = [];
    for (let tempC = zeroC; tempC <= topC + 1; tempC += stepC) {
      const at = y(tempC);
      const degrees = Math.round(units === "F" ? fahrenheitFromCelsius(tempC) : tempC);
      lines.push(
        stroke("line", { x1: AXIS_MM, x2: AXIS_MM + plotWidth, y1: at, y2: at }, COLOURS.line, LINES.hair),
        textLine(AXIS_MM - 1.5, at + 1, String(degrees), { sizePt: SIZES.small, anchor: "end", fill: COLOURS.quiet }),
      );
    }
    lines.push(textLine(0, 3, `°${units}`, { sizePt: SIZES.small, fill: COLOURS.quiet }));
    return lines;
  }

  function hourGrid(): SvgNode[] {
    const hours = chart.untilMin / 60;
    const step = [1, 2, 4, 6, 12, 24].find((each) => hours / each <= 13) ?? 48;
    const lines: SvgNode[] = [];
    const bottom = 4 + plotHeight + POWER_MM;
    for (let hour = 0; hour <= hours + 1e-9; hour += step) {
      const at = x(hour * 60);
      lines.push(
        stroke("line", { x1: at, x2: at, y1: 4, y2: bottom }, COLOURS.line, LINES.hair),
        textLine(at, bottom + 4.5, String(hour), { sizePt: SIZES.small, anchor: "middle", fill: COLOURS.quiet }),
      );
    }
    const middle = AXIS_MM + plotWidth / 2;
    lines.push(
      textLine(middle, bottom + 9, "hours from the start", {
        sizePt: SIZES.small,
        anchor: "middle",
        fill: COLOURS.quiet,
      }),
    );
    return lines;
  }

  function powerMarks(power: NonNullable<FiringChart["power"]>): SvgNode[] {
    const foot = 4 + plotHeight + POWER_MM;
    const height = (watts: number): number => (POWER_MM - 5) * Math.min(1, watts / power.fullW);
    const parts: (string | number)[] = ["M", AXIS_MM, foot];
    for (let i = 0; i < power.minutes.length; i++) {
      const minute = power.minutes[i] as number;
      if (minute > chart.untilMin) break;
      parts.push("L", x(minute), foot - height(power.powerW[i] as number));
    }
    parts.push("L", x(chart.untilMin), foot, "Z");
    return [
      element("path", { d: pathOf(...parts), fill: COLOURS.clay, stroke: COLOURS.line, "stroke-width": LINES.hair }),
      textLine(AXIS_MM + 1.5, foot - POWER_MM + 8.5, `power, of ${Math.round(power.fullW / 100) / 10} kW`, {
        sizePt: SIZES.small,
        fill: COLOURS.quiet,
      }),
    ];
  }

  function curve(line: ChartLine, colour: string, width: number, dashes?: string): SvgNode {
    const parts: (string | number)[] = [];
    for (let i = 0; i < line.minutes.length; i++) {
      const minute = line.minutes[i] as number;
      if (minute > chart.untilMin) break;
      parts.push(i === 0 ? "M" : "L", x(minute), y(line.tempC[i] as number));
    }
    return element("path", {
      d: pathOf(...parts),
      fill: "none",
      stroke: colour,
      "stroke-width": width,
      "stroke-linejoin": "round",
      "stroke-dasharray": dashes,
    });
  }

  /** Cones fall within minutes of each other: their names stand side by side above the curve. */
  function coneMarks(): SvgNode[] {
    let free = Number.NEGATIVE_INFINITY;
    return chart.cones.flatMap(({ cone, downAtMin, tempC }) => {
      const at = x(downAtMin);
      const label = Math.max(at, free);
      free = label + 7;
      return [
        element("circle", { cx: at, cy: y(tempC), r: 0.9, fill: COLOURS.ink }),
        stroke("line", { x1: at, y1: y(tempC) - 1, x2: label, y2: y(topC) + 4.5 }, COLOURS.quiet, LINES.hair),
        textLine(label, y(topC) + 3.5, cone, { sizePt: SIZES.small, weight: "bold", anchor: "middle" }),
      ];
    });
  }
}

const stroke = (name: string, attributes: Record<string, number>, colour: string, width: number): SvgNode =>
  element(name, { ...attributes, stroke: colour, "stroke-width": width });

function most(values: ArrayLike<number>): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) greatest = Math.max(greatest, values[i] as number);
  return greatest;
}
