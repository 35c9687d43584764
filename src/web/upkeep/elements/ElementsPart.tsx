import { type ReactNode, useId } from "react";
import { MEASURING_CAUTION } from "../../../firing/elements/element-condition.ts";
import type { UpkeepDue } from "../../../studio/firings/upkeep-due.ts";
import { CautionNote } from "../../parts/index.ts";
import { dayWords } from "../ages/age-words.ts";
import styles from "../Upkeep.module.css";
import { WearChart } from "./WearChart.tsx";
import { remainingWords, wornWords } from "./wear-words.ts";

interface ElementsPartProps {
  readonly elements: UpkeepDue["elements"];
  readonly actions: ReactNode;
}

/** How the elements wear and how many firings they last yet. */
export function ElementsPart({ elements, actions }: ElementsPartProps) {
  const id = useId();
  const { wear, firings, changedAt } = elements;
  const words = [wornWords(wear), remainingWords(wear)].filter((each) => each !== null).join(" ");
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>Elements</h2>
      {words !== "" && <p>{words}</p>}
      {wear.points.length === 0 ? (
        <p>
          Measured now and then, their resistance shows how they wear and how many firings they last. Measure every
          circuit cold, always in the same order; best when they are new, then every twenty firings or so.
        </p>
      ) : (
        <WearChart
          wear={wear}
          now={firings}
          label={`Rise of the elements’ resistance over ${firings} firings, measured ${wear.points.length} times. ${words}`}
        />
      )}
      {wear.notes.map((note) => (
        <p key={note} className={styles.soft}>
          {note}
        </p>
      ))}
      {wear.points.length > 0 && (
        <details className={styles.more}>
          <summary>Every measuring</summary>
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">On</th>
                <th scope="col">After</th>
                <th scope="col">Circuits</th>
                <th scope="col">Rise</th>
              </tr>
            </thead>
            <tbody>
              {wear.points.toReversed().map(({ at, firings: after, ohms, rise }) => (
                <tr key={at}>
                  <th scope="row">{dayWords(at)}</th>
                  <td>{after === 1 ? "1 firing" : `${after} firings`}</td>
                  <td>{ohms.map((each) => `${each}\u00A0Ω`).join(", ")}</td>
                  <td>{(100 * rise).toFixed(1)} %</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
      <p className={styles.soft}>
        {wear.limit.reason} Source: {wear.limit.source}. {changedAt !== null && `New on ${dayWords(changedAt)}.`}
      </p>
      <CautionNote title="Cut off from the supply first">{MEASURING_CAUTION}</CautionNote>
      <div className={styles.buttons}>{actions}</div>
    </section>
  );
}
