import { useId } from "react";
import type { WatchedHeat } from "../../../studio/api/watch-contract.ts";
import parts from "../Watch.module.css";
import { conesWords, placeOfHeat } from "../words/heat-words.ts";
import { ConeRow } from "./ConeRow.tsx";
import styles from "./Cones.module.css";
import { conePack } from "./cone-pack.ts";

interface ConesPartProps {
  readonly heat: readonly WatchedHeat[];
  /** The cone waited for, or null. */
  readonly wanted: string | null;
}

/** Cones so far: at the probe, and by the model on each shelf, as they stand in the kiln. */
export function ConesPart({ heat, wanted }: ConesPartProps) {
  const id = useId();
  const probe = heat.find(({ level }) => level === null);
  const shelves = heat.filter(({ level }) => level !== null).toReversed();
  return (
    <section className={`${parts.part} ${parts.cones}`} aria-labelledby={id}>
      <h2 id={id}>Cones so far</h2>
      {probe === undefined ? (
        <p>They are drawn once readings come in.</p>
      ) : (
        <div className={styles.probe}>
          <ConeRow cones={conePack(probe, wanted)} />
          <p>
            <strong>{conesWords(probe)}</strong>
            <span className={parts.soft}>by the heat work at the probe</span>
          </p>
        </div>
      )}
      {shelves.length > 0 && (
        <ul className={styles.shelves}>
          {shelves.map((shelf) => (
            <li key={shelf.level}>
              <b>{placeOfHeat(shelf)}</b>
              <ConeRow cones={conePack(shelf, wanted)} isSmall />
              <span>{conesWords(shelf)}</span>
            </li>
          ))}
        </ul>
      )}
      {shelves.length > 0 && (
        <p className={parts.soft}>Shelves are the model’s word. Witness cones have the last one.</p>
      )}
    </section>
  );
}
