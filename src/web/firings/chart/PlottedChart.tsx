import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import "uplot/dist/uPlot.min.css";
import { formatTemperature } from "../../../measures/temperature.ts";
import { Button } from "../../parts/index.ts";
import { clockWords } from "../words/clock-words.ts";
import type { FiringChartProps } from "./chart-props.ts";
import { hoursWords, temperatureAt } from "./chart-words.ts";
import styles from "./FiringChart.module.css";
import { LineSample } from "./LineSample.tsx";
import { makePlot, type PlotHandle } from "./make-plot.ts";

const KEY_STEP_PX = 8;

/** The chart itself, drawn on a canvas. */
export default function PlottedChart(props: FiringChartProps) {
  const { label, series, units, startAt } = props;
  const place = useRef<HTMLDivElement>(null);
  const plot = useRef<PlotHandle | null>(null);
  const [atMin, setAtMin] = useState<number | null>(null);
  const [isNear, setNear] = useState(false);
  const shape = useMemo(() => series.map(({ name, look }) => `${look} ${name}`).join("\n"), [series]);
  const latest = useRef(props);
  latest.current = props;

  // biome-ignore lint/correctness/useExhaustiveDependencies: drawn anew where its lines are others; new data is only put in.
  useEffect(() => {
    const holder = place.current;
    if (!holder) return;
    const made = makePlot(holder, () => latest.current, { cursor: setAtMin, zoomed: setNear });
    plot.current = made;
    const sized = new ResizeObserver(() => made.resize());
    sized.observe(holder);
    const look = new MutationObserver(() => made.recolour());
    look.observe(document.documentElement, { attributeFilter: ["data-look"] });
    return () => {
      sized.disconnect();
      look.disconnect();
      made.free();
      plot.current = null;
    };
  }, [shape, units]);

  useEffect(() => {
    void props;
    plot.current?.update();
  }, [props]);

  const [from, to] = plot.current?.span() ?? [0, 1];
  const words = useMemo(() => {
    if (atMin === null) return "";
    const when = startAt ? `${hoursWords(atMin)}, ${clockWords(startAt, atMin)}` : hoursWords(atMin);
    const shown = series.flatMap((line) => {
      const celsius = temperatureAt(line, atMin);
      return celsius === null || line.look === "level" ? [] : [`${line.name} ${formatTemperature(celsius, units)}`];
    });
    return `${when}: ${shown.join("; ")}`;
  }, [atMin, series, startAt, units]);

  const pressed = (event: KeyboardEvent): void => {
    const steps = { ArrowLeft: -1, ArrowRight: 1, PageDown: -8, PageUp: 8, Home: -1e4, End: 1e4 }[event.key];
    if (steps === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    plot.current?.moveCursor(steps * KEY_STEP_PX);
  };

  return (
    <>
      <div className={styles.above}>
        <Key {...props} atMin={atMin} />
        {isNear && (
          <Button look="quiet" onPress={() => plot.current?.whole()}>
            Show all of it
          </Button>
        )}
      </div>
      <div
        ref={place}
        className={styles.plot}
        role="slider"
        aria-label={label}
        aria-orientation="horizontal"
        aria-valuemin={Math.round(from)}
        aria-valuemax={Math.round(to)}
        aria-valuenow={Math.round(atMin ?? from)}
        aria-valuetext={words || "Arrow keys go along the firing."}
        tabIndex={0}
        onKeyDown={pressed}
      />
    </>
  );
}

/** Which line is which, and what each shows where the chart is pointed at. */
function Key({ series, units, startAt, atMin }: FiringChartProps & { readonly atMin: number | null }) {
  const levels = series.filter(({ look }) => look === "level");
  const rest = series.filter(({ look }) => look !== "level");
  return (
    <ul className={styles.key}>
      {atMin !== null && (
        <li className={styles.at}>
          {hoursWords(atMin)}
          {startAt && `, ${clockWords(startAt, atMin)}`}
        </li>
      )}
      {rest.map((line) => {
        const celsius = atMin === null ? null : temperatureAt(line, atMin);
        return (
          <li key={line.name}>
            <LineSample look={line.look} />
            <span>{line.name}</span>
            {atMin !== null && <b>{celsius === null ? "–" : formatTemperature(celsius, units)}</b>}
          </li>
        );
      })}
      {levels.length > 0 && (
        <li>
          <LineSample look="level" />
          <span>{levels.length === 1 ? levels[0]?.name : "each shelf’s ware"}</span>
        </li>
      )}
    </ul>
  );
}
