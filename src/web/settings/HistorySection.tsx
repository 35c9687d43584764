import { UndoIcon } from "../parts/icons.tsx";
import { Spinner } from "../parts/Spinner.tsx";
import { useConnection, useWholeHistory } from "../studio/hooks.ts";
import styles from "./HistorySection.module.css";
import { Section } from "./Section.tsx";
import { dayAndTime } from "./when.ts";

const SHOWN = 30;

/** What was done last, by whichever browser. */
export function HistorySection() {
  const history = useWholeHistory();
  const connection = useConnection();
  return (
    <Section title="What was done">
      {history === undefined &&
        (connection === "away" ? <p>Shown again when the studio answers.</p> : <Spinner words="Looking back" />)}
      {history?.length === 0 && <p>Nothing yet. Whatever you do can be undone on the screen where it was done.</p>}
      {history && history.length > 0 && (
        <ol className={styles.list}>
          {history.slice(0, SHOWN).map(({ id, at, summary, undone }) => (
            <li key={id}>
              <span className={undone ? styles.undone : undefined}>{summary}</span>
              {undone && (
                <span className={styles.mark}>
                  <UndoIcon size={16} /> undone
                </span>
              )}
              <time dateTime={at}>{dayAndTime(at)}</time>
            </li>
          ))}
        </ol>
      )}
    </Section>
  );
}
