import { AwayIcon } from "../parts/icons.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { useConnection, useWaitingCount } from "../studio/hooks.ts";
import styles from "./ConnectionLine.module.css";

/** How things stand between this browser and the studio, where there is anything to say. */
export function ConnectionLine() {
  const connection = useConnection();
  const waiting = useWaitingCount();
  return (
    <div role="status" data-print="no">
      {connection === "away" && (
        <p className={styles.away}>
          <AwayIcon />
          <span>
            {waiting > 0
              ? "Not saved yet: the studio does not answer. Nothing is lost."
              : "The studio does not answer. You see what it said last."}
          </span>
        </p>
      )}
      {connection === "sending" && (
        <p className={styles.sending}>
          <Spinner isSmall />
          <span>Saving</span>
        </p>
      )}
    </div>
  );
}
