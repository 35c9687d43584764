import type { TemperatureUnits } from "../../../measures/temperature.ts";
import type { ChartMark, ChartSeries } from "./chart-series.ts";

/** What a chart of a firing is given. */
export interface FiringChartProps {
  /** What it shows, in a sentence, for who cannot see it. */
  readonly label: string;
  readonly series: readonly ChartSeries[];
  readonly marks?: readonly ChartMark[] | undefined;
  readonly units: TemperatureUnits;
  /** When it was or is to be switched on: hours are shown by the clock then, else from the start. */
  readonly startAt?: string | null | undefined;
  /** Drawn from and up to here, minutes; all of the lines where left out. */
  readonly fromMin?: number | undefined;
  readonly untilMin?: number | undefined;
  /** Moments marked for the table alone would crowd it; left out: the chart's own marks. */
  readonly tableMarks?: readonly ChartMark[] | undefined;
}
