import { lazy, Suspense, useState } from "react";
import type { TemperatureUnits } from "../../../measures/temperature.ts";
import { Spinner } from "../../parts/index.ts";
import { ChartTable } from "./ChartTable.tsx";
import type { ChartMark, ChartSeries } from "./chart-series.ts";
import styles from "./FiringChart.module.css";

const PlottedChart = lazy(() => import("./PlottedChart.tsx"));

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

/**
 * A firing over time: programme, what was foretold, what was measured, heat work as cones on a second scale. Pointed at,
 * touched or gone through by arrow keys it says what every line shows. All of it stands in a table too.
 */
export function FiringChart(props: FiringChartProps) {
  const { series, marks = [], units, startAt, tableMarks } = props;
  const [showsTable, setShowsTable] = useState(false);
  return (
    <figure className={styles.chart}>
      <Suspense
        fallback={
          <div className={styles.coming}>
            <Spinner words="The chart is being drawn" />
          </div>
        }
      >
        <PlottedChart {...props} />
      </Suspense>
      <details className={styles.table} onToggle={(event) => setShowsTable(event.currentTarget.open)}>
        <summary>The chart as a table</summary>
        {showsTable && <ChartTable series={series} marks={tableMarks ?? marks} units={units} startAt={startAt} />}
      </details>
    </figure>
  );
}
