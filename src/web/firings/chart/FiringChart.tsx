import { lazy, Suspense, useState } from "react";
import { Spinner } from "../../parts/index.ts";
import { ChartTable } from "./ChartTable.tsx";
import type { FiringChartProps } from "./chart-props.ts";
import styles from "./FiringChart.module.css";

const PlottedChart = lazy(() => import("./PlottedChart.tsx"));

export type { FiringChartProps } from "./chart-props.ts";

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
