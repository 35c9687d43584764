import uPlot from "uplot";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "../../../measures/temperature.ts";
import { timeWords } from "../words/clock-words.ts";
import type { FiringChartProps } from "./chart-props.ts";
import type { ChartSeries } from "./chart-series.ts";
import { coneTicks, degreeTicks, hourTicks } from "./cone-scale.ts";
import { drawMarks } from "./draw-marks.ts";
import { LINES } from "./line-looks.ts";

/** A chart on the screen. */
export interface PlotHandle {
  /** Shows the newest of its properties. */
  update(): void;
  resize(): void;
  recolour(): void;
  /** The whole firing again. */
  whole(): void;
  /** Minutes from and to which it shows. */
  span(): [number, number];
  moveCursor(byPx: number): void;
  free(): void;
}

interface Told {
  /** The minute pointed at, or null. */
  readonly cursor: (minute: number | null) => void;
  /** Whether only a part of the firing shows. */
  readonly zoomed: (isNear: boolean) => void;
}

const CONE_ROOM_PX = 17;
const DEGREE_ROOM_PX = 34;

/** Draws the chart in a holder and keeps it drawn. */
export function makePlot(holder: HTMLElement, latest: () => FiringChartProps, told: Told): PlotHandle {
  const { units } = latest();
  const inUnits = (celsius: number): number => (units === "F" ? fahrenheitFromCelsius(celsius) : celsius);
  const colour = (token: string) => () => getComputedStyle(holder).getPropertyValue(`--${token}`).trim() || "#888";
  const font = () => `14px ${getComputedStyle(holder).fontFamily}`;
  const fullSpan = (): [number, number] => spanOf(latest());
  let near: [number, number] | null = null;
  const axis = { font: font(), stroke: colour("ink-soft"), ticks: { show: false }, labelFont: font() };
  const grid = { stroke: colour("line"), width: 1 };

  const plot = new uPlot(
    {
      width: holder.clientWidth,
      height: holder.clientHeight,
      legend: { show: false },
      padding: [10, 4, 0, 0],
      cursor: { y: false, points: { show: false }, drag: { x: true, y: false, dist: 12 } },
      scales: {
        x: { time: false, range: () => near ?? fullSpan() },
        y: { range: () => heightOf(latest(), inUnits) },
      },
      axes: [
        {
          ...axis,
          grid,
          splits: (self, __, from, to) => hourTicks(from, to, Math.max(2, widthOf(self) / 84)),
          values: (_, minutes) => minutes.map((minute) => hourLabel(minute, latest().startAt)),
          size: 30,
        },
        {
          ...axis,
          grid,
          size: 52,
          splits: (self, __, low, high) => degreeTicks(low, high, Math.max(2, heightPx(self) / DEGREE_ROOM_PX)),
          values: (_, degrees) => degrees.map((degree) => `${degree}°`),
        },
        {
          ...axis,
          side: 1,
          scale: "y",
          grid: { show: false },
          size: 34,
          splits: (self, __, low, high) => conesBetween(self, low, high).map(({ tempC }) => inUnits(tempC)),
          values: (self) => conesBetween(self, ...heightOf(latest(), inUnits)).map(({ cone }) => cone),
        },
      ],
      series: [{}, ...latest().series.map((line) => seriesOf(line, colour))],
      hooks: {
        setCursor: [
          (self) => {
            const { left } = self.cursor;
            told.cursor(left === undefined || left < 0 ? null : self.posToVal(left, "x"));
          },
        ],
        setScale: [
          (self, key) => {
            if (key !== "x") return;
            const { min, max } = self.scales.x ?? {};
            const [from, to] = fullSpan();
            const isNear = min != null && max != null && (min > from + 1 || max < to - 1);
            told.zoomed(isNear);
          },
        ],
        setSelect: [
          (self) => {
            const { left, width } = self.select;
            if (width < 12) return;
            near = [self.posToVal(left, "x"), self.posToVal(left + width, "x")];
          },
        ],
        draw: [(self) => drawMarks(self, latest().marks ?? [], { inUnits, colour, font: font() })],
      },
    },
    dataOf(latest().series, inUnits),
    holder,
  );

  function conesBetween(self: uPlot, low: number, high: number) {
    const [lowC, highC] = [low, high].map((each) => (units === "F" ? celsiusFromFahrenheit(each) : each));
    const perPx = ((highC as number) - (lowC as number)) / heightPx(self);
    return coneTicks(lowC as number, highC as number, CONE_ROOM_PX * perPx);
  }
  const point = (left: number) => plot.setCursor({ left, top: heightPx(plot) / 2 });

  // A finger goes along the firing as a pointer does; up and down it scrolls the page.
  const fingers = (event: PointerEvent): void => {
    if (event.pointerType === "mouse") return;
    point(event.clientX - plot.over.getBoundingClientRect().left);
  };
  plot.over.addEventListener("pointerdown", fingers);
  plot.over.addEventListener("pointermove", fingers);
  plot.over.style.touchAction = "pan-y";
  plot.root.setAttribute("aria-hidden", "true");
  const whole = () => {
    near = null;
    plot.setData(plot.data);
  };
  plot.over.addEventListener("dblclick", whole);

  return {
    update: () => plot.setData(dataOf(latest().series, inUnits)),
    resize: () => plot.setSize({ width: holder.clientWidth, height: holder.clientHeight }),
    recolour: () => plot.redraw(false, true),
    whole,
    span: () => near ?? fullSpan(),
    moveCursor: (byPx) => {
      const { left = -1 } = plot.cursor;
      point(Math.max(0, Math.min(widthOf(plot) - 1, Math.max(left, 0) + byPx)));
    },
    free: () => plot.destroy(),
  };
}

const widthOf = (plot: uPlot): number => Math.max(1, plot.over.clientWidth);
const heightPx = (plot: uPlot): number => Math.max(1, plot.over.clientHeight);

function seriesOf(line: ChartSeries, colour: (token: string) => () => string): uPlot.Series {
  const { token, width, dash } = LINES[line.look];
  return { label: line.name, stroke: colour(token), width, dash: [...dash], points: { show: false } };
}

/** The lines on one row of minutes, in her degrees: where a line has no point it goes straight on; a gap stays one. */
function dataOf(series: readonly ChartSeries[], inUnits: (celsius: number) => number): uPlot.AlignedData {
  const tables = series.map((line): uPlot.AlignedData => {
    const tempC = Array.from(line.tempC, (celsius) => (Number.isFinite(celsius) ? inUnits(celsius) : null));
    return [Array.from(line.minutes), tempC];
  });
  return tables.length === 0 ? [[]] : uPlot.join(tables);
}

function spanOf({ series, fromMin, untilMin }: FiringChartProps): [number, number] {
  const ends = series.map(({ minutes }) => (minutes.length === 0 ? 0 : (minutes[minutes.length - 1] as number)));
  const from = fromMin ?? 0;
  return [from, Math.max(from + 60, untilMin ?? Math.max(0, ...ends))];
}

/** From the freezing point of water up to a little over the hottest line. */
function heightOf({ series }: FiringChartProps, inUnits: (celsius: number) => number): [number, number] {
  let hottest = 100;
  for (const { tempC } of series) {
    for (let i = 0; i < tempC.length; i++) if ((tempC[i] as number) > hottest) hottest = tempC[i] as number;
  }
  return [inUnits(0), inUnits(hottest * 1.07 + 15)];
}

const hourLabel = (minute: number, startAt: string | null | undefined): string => {
  if (startAt) return timeWords(startAt, minute);
  return minute % 60 === 0 ? `${minute / 60} h` : `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
};
