import { type ReactNode, useId, useMemo } from "react";
import { Link } from "wouter";
import { type FiringAgainst, predictedAgainstActual } from "../../../studio/firings/predicted-against-actual.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { hoursLong, kWhWords } from "../../firings/words/figures.ts";
import { useSettings } from "../../studio/hooks.ts";
import parts from "../Learn.module.css";
import { degreeDifference } from "../taught/parameter-words.ts";
import styles from "./Against.module.css";
import { AgainstTable } from "./AgainstTable.tsx";
import { howFarOffWords, pairsOf } from "./against-words.ts";
import { PairChart } from "./PairChart.tsx";
import { ShelvesChart } from "./ShelvesChart.tsx";

const SHOWN = 12;
const SHOWN_SHELVES = 6;

/** Foretold against measured over the firings: hours, energy, what the shelves' cones saw. */
export function AgainstPart({ firings }: { readonly firings: readonly FiringRecord[] }) {
  const id = useId();
  const { temperatureUnits: units } = useSettings();
  const rows = useMemo(() => predictedAgainstActual(firings, new Map()), [firings]);
  const hours = pairsOf(rows, "hours", SHOWN);
  const kWh = pairsOf(rows, "kWh", SHOWN);
  const coned = rows.filter(({ shelves }) => shelves.length > 0).slice(-SHOWN_SHELVES);
  if (rows.length === 0) return null;
  const degrees = (celsius: number): string =>
    `${celsius > 0 ? "+" : celsius < 0 ? "−" : ""}${degreeDifference(celsius, units)}`;
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>Foretold and measured</h2>
      <ul className={styles.key}>
        <li>
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <circle className={styles.foretold} cx="8" cy="8" r="5.5" />
          </svg>
          foretold
        </li>
        <li>
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <circle className={styles.measured} cx="8" cy="8" r="4" />
          </svg>
          measured
        </li>
      </ul>
      <div className={styles.charts}>
        {hours.length > 0 && (
          <Charted title="Hours to shut-off" words={howFarOffWords(rows, "hoursPercent", units)}>
            <PairChart
              pairs={hours}
              narrowest={2}
              shown={(value) => `${Number(value.toFixed(1))} h`}
              label={pairLabel("Hours to shut-off", hours.at(-1), hoursLong)}
            />
          </Charted>
        )}
        {kWh.length > 0 && (
          <Charted title="Energy" words={howFarOffWords(rows, "kWhPercent", units)}>
            <PairChart
              pairs={kWh}
              narrowest={8}
              shown={(value) => `${Number(value.toFixed(1))} kWh`}
              label={pairLabel("Energy", kWh.at(-1), kWhWords)}
            />
          </Charted>
        )}
        {coned.length > 0 && (
          <Charted title="Heat of the shelves, by their cones" words={howFarOffWords(rows, "shelfC", units)}>
            <ShelvesChart rows={coned} shown={degrees} label={shelvesLabel(coned.at(-1), degrees)} />
            <p className={parts.soft}>
              A number is a shelf, counted from the floor: over the line it ran hotter than foretold, under it cooler.
            </p>
          </Charted>
        )}
      </div>
      <details className={parts.more}>
        <summary>Every firing as a table</summary>
        <AgainstTable rows={rows} degrees={degrees} />
      </details>
      {coned.length === 0 && (
        <p className={parts.soft}>
          No shelf has told yet how hot it was. Set witness cones on it, and note how far they bent when you unload the{" "}
          <Link href="/firings">firing</Link>.
        </p>
      )}
    </section>
  );
}

interface ChartedProps {
  readonly title: string;
  readonly words: string | null;
  readonly children: ReactNode;
}

function Charted({ title, words, children }: ChartedProps) {
  return (
    <figure className={styles.charted}>
      <figcaption>
        <strong>{title}</strong>
        {words && <span>{words}</span>}
      </figcaption>
      {children}
    </figure>
  );
}

function pairLabel(
  what: string,
  last: ReturnType<typeof pairsOf>[number] | undefined,
  shown: (value: number) => string,
): string {
  if (!last) return what;
  const parts = [
    last.foretold === null ? "not foretold" : `foretold ${shown(last.foretold)}`,
    last.actual === null ? "not measured" : `measured ${shown(last.actual)}`,
  ];
  return `${what} over the firings. The last, ${last.name} of ${dayClockWords(last.startedAt)}: ${parts.join(", ")}.`;
}

function shelvesLabel(last: FiringAgainst | undefined, degrees: (celsius: number) => string): string {
  const shelves = (last?.shelves ?? []).map(({ level, off }) => `shelf ${level + 1} ${degrees(off ?? 0)}`);
  return `Heat of the shelves over what was foretold. The last firing, ${last?.name}: ${shelves.join(", ")}.`;
}
