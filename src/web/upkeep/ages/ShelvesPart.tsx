import { type ReactNode, useId } from "react";
import type { UpkeepDue } from "../../../studio/firings/upkeep-due.ts";
import styles from "../Upkeep.module.css";

/** What was done to the shelves, and how long ago. */
export function ShelvesPart({
  shelves,
  actions,
}: {
  readonly shelves: UpkeepDue["shelves"];
  readonly actions: ReactNode;
}) {
  const id = useId();
  const ago = (firings: number): string =>
    firings === 0 ? "Since the last firing" : firings === 1 ? "1 firing ago" : `${firings} firings ago`;
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>Shelves</h2>
      <dl className={styles.figures}>
        <div>
          <dt>Washed</dt>
          <dd>
            <strong>{shelves.washed === 0 ? "Not yet" : ago(shelves.firingsSinceWash)}</strong>
            <span className={styles.soft}>{shelves.washed} in all</span>
          </dd>
        </div>
        <div>
          <dt>Turned</dt>
          <dd>
            <strong>{shelves.turned === 0 ? "Not yet" : ago(shelves.firingsSinceTurn)}</strong>
            <span className={styles.soft}>{shelves.turned} in all</span>
          </dd>
        </div>
        <div>
          <dt>Cracked</dt>
          <dd>
            <strong>{shelves.cracked}</strong>
            <span className={styles.soft}>of {shelves.of} the kiln has now</span>
          </dd>
        </div>
      </dl>
      <p className={styles.soft}>
        Turned shelves sag back level; a crack that a fingernail finds will be two halves under ware one day. Scrape and
        wash with a respirator on, wet: kiln wash is silica. Common practice, no source.
      </p>
      <div className={styles.buttons}>{actions}</div>
    </section>
  );
}
