import { useId, useMemo } from "react";
import type { Programme } from "../../../firing/programme/programme.ts";
import { formatTemperature } from "../../../measures/temperature.ts";
import { openAfterHoursOf } from "../../../studio/firing-start.ts";
import type { ForetoldRecord } from "../../../studio/records/firing-parts.ts";
import { Button, Sign, Spinner } from "../../parts/index.ts";
import { useSettings, useWaitingCount } from "../../studio/hooks.ts";
import { FiringChart } from "../chart/FiringChart.tsx";
import type { Foretelling } from "../foretelling/use-foretelling.ts";
import { hoursLong, kWhWords } from "../words/figures.ts";
import { apartC, expectedChart, isOtherThan, levelCone, offsetWords } from "./expect-words.ts";
import styles from "./Preparing.module.css";

interface ExpectPartProps {
  readonly programme: Programme;
  readonly startAt: string | null;
  readonly telling: Foretelling;
  /** What the firing keeps of it, to be held against what will come. */
  readonly kept: ForetoldRecord | undefined;
  readonly onKeepAnew: () => void;
}

/** What this load is expected to get from the programme in this kiln. */
export function ExpectPart({ programme, startAt, telling, kept, onKeepAnew }: ExpectPartProps) {
  const isSent = useWaitingCount() === 0;
  const { temperatureUnits: units } = useSettings();
  const id = useId();
  const { foretold, advice, isBusy } = telling;
  const chart = useMemo(() => foretold && expectedChart(programme, foretold.prediction), [programme, foretold]);
  if (!foretold || !chart) {
    return (
      <section className={styles.part} aria-labelledby={id}>
        <h2 id={id}>What to expect</h2>
        {telling.error === null ? (
          <Spinner words="The firing is being foretold" />
        ) : (
          <p>It cannot be foretold as it is.</p>
        )}
      </section>
    );
  }
  const { prediction, cone, assumed } = foretold;
  const apart = apartC(prediction);
  const openAfter = openAfterHoursOf(prediction);
  return (
    <section className={isBusy ? `${styles.part} ${styles.busy}` : styles.part} aria-labelledby={id} aria-busy={isBusy}>
      <h2 id={id}>What to expect</h2>
      <dl className={styles.figures}>
        <div>
          <dt>Shuts off after</dt>
          <dd>{hoursLong(prediction.hours)}</dd>
        </div>
        <div>
          <dt>Lid may be lifted after</dt>
          <dd>{openAfter === null ? "over a week" : hoursLong(openAfter)}</dd>
        </div>
        <div>
          <dt>Draws about</dt>
          <dd>{kWhWords(prediction.kWh)}</dd>
        </div>
        <div>
          <dt>Hottest at the probe</dt>
          <dd>{formatTemperature(prediction.peakC, units)}</dd>
        </div>
      </dl>
      <FiringChart
        label={`${programme.name}, foretold: ${hoursLong(prediction.hours)} to shut-off, hottest ${formatTemperature(prediction.peakC, units)}`}
        series={chart.series}
        marks={chart.marks}
        tableMarks={chart.tableMarks}
        units={units}
        startAt={startAt}
        untilMin={chart.untilMin}
      />
      {prediction.troubles.length > 0 && (
        <ul className={styles.signs}>
          {prediction.troubles.map((trouble) => (
            <li key={trouble}>
              <Sign kind={prediction.finished ? "mind" : "breaks"}>{trouble}</Sign>
            </li>
          ))}
        </ul>
      )}
      {prediction.levels.length > 0 && (
        <table className={styles.levels}>
          <caption className="heard">What each level should get</caption>
          <thead>
            <tr>
              <th scope="col">Level</th>
              <th scope="col">Cones{cone === null ? "" : `, for cone ${cone}`}</th>
              <th scope="col">Heat work</th>
            </tr>
          </thead>
          <tbody>
            {[...prediction.levels].reverse().map((level, i) => (
              <tr key={level.level}>
                <th scope="row">
                  {level.level + 1}
                  {i === 0 && prediction.levels.length > 1 ? ", top" : ""}
                </th>
                <td>{levelCone(level)}</td>
                <td>{offsetWords(level.offsetC, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {apart !== null && (
        <p>
          The levels lie {Math.round(units === "F" ? apart * 1.8 : apart)} °{units} of heat work apart.
        </p>
      )}
      {kept && isSent && !isBusy && isOtherThan(kept, prediction) && (
        <Sign kind="mind">
          The load, or what is known of the kiln, has changed since this firing was prepared.{" "}
          <Button look="plain" onPress={onKeepAnew}>
            Go by this one
          </Button>
        </Sign>
      )}
      <Advice advice={advice} isBusy={isBusy} />
      {(assumed.length > 0 || prediction.warnings.length > 0) && (
        <details className={styles.more}>
          <summary>What was taken for granted</summary>
          <ul>
            {[...assumed, ...prediction.warnings].map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      )}
      <p className={styles.soft}>Reckoned, not measured: witness cones have the last word.</p>
    </section>
  );
}

function Advice({ advice, isBusy }: { readonly advice: readonly string[] | undefined; readonly isBusy: boolean }) {
  if (advice === undefined) return isBusy ? null : <p className={styles.soft}>Trying what would even it out…</p>;
  if (advice.length === 0) return null;
  return (
    <>
      <h3>Tried in this kiln with this load</h3>
      <ul className={styles.advice}>
        {advice.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
