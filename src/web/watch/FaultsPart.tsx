import type { WatchedFault } from "../../studio/api/watch-contract.ts";
import { DoneIcon, MindIcon } from "../parts/index.ts";
import styles from "./Faults.module.css";
import { DANGER_CAUTION, faultSpan, faultsInOrder, faultTitle, LOOK_CAUTION } from "./words/fault-words.ts";

interface FaultsPartProps {
  readonly faults: readonly WatchedFault[];
  readonly startedAt: string;
}

/** What is wrong now, with what to look at; below it what was and is over. */
export function FaultsPart({ faults, startedAt }: FaultsPartProps) {
  const { lasting, over } = faultsInOrder(faults);
  return (
    <>
      <div role="alert" className={styles.lasting}>
        {lasting.map((fault) => (
          <article
            key={`${fault.kind} ${fault.sinceMin}`}
            className={`${styles.fault} ${fault.isDanger ? styles.danger : ""}`}
          >
            <MindIcon size={34} />
            <div>
              <h2>{faultTitle(fault)}</h2>
              <p className={styles.found}>
                {fault.found}, {faultSpan(fault, startedAt)}
              </p>
              <p>{fault.message}</p>
              <p className={styles.caution}>{fault.isDanger ? DANGER_CAUTION : LOOK_CAUTION}</p>
            </div>
          </article>
        ))}
      </div>
      {over.length > 0 && (
        <details className={styles.over}>
          <summary>
            {over.length === 1
              ? "One thing was noticed and is over"
              : `${over.length} things were noticed and are over`}
          </summary>
          <ul>
            {over.map((fault) => (
              <li key={`${fault.kind} ${fault.sinceMin}`}>
                <DoneIcon size={18} />
                <span>
                  <b>{faultTitle(fault)}</b>: {fault.found}, {faultSpan(fault, startedAt)}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
