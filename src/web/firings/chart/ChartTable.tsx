import type { TemperatureUnits } from "../../../measures/temperature.ts";
import { clockWords } from "../words/clock-words.ts";
import type { ChartMark, ChartSeries } from "./chart-series.ts";
import { hoursWords, momentRows } from "./chart-words.ts";
import styles from "./FiringChart.module.css";

interface ChartTableProps {
  readonly series: readonly ChartSeries[];
  readonly marks: readonly ChartMark[];
  readonly units: TemperatureUnits;
  readonly startAt: string | null | undefined;
}

/** The chart's main moments in figures. */
export function ChartTable({ series, marks, units, startAt }: ChartTableProps) {
  const lines = series.filter(({ look }) => look !== "level");
  const rows = momentRows(lines, marks, units);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys.
    <section className={styles.scroll} tabIndex={0} aria-label="The chart as a table">
      <table>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
            {lines.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ atMin, what, shown }) => (
            <tr key={`${atMin} ${what}`}>
              <td>
                {hoursWords(atMin)}
                {startAt && `, ${clockWords(startAt, atMin)}`}
              </td>
              <th scope="row">{what}</th>
              {shown.map((words, i) => (
                <td key={lines[i]?.name}>{words}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
