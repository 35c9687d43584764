import type { Outcome } from "../../../studio/records/firing-parts.ts";
import { faultName } from "./fault-words.ts";
import { GRADE_NAMES, gradeSign } from "./grade-signs.tsx";
import styles from "./PieceList.module.css";
import type { FiredPiece } from "./pieces.ts";

interface PieceListProps {
  readonly pieces: readonly FiredPiece[];
  readonly judged: ReadonlyMap<string, Outcome>;
  readonly chosen: string | null;
  readonly onChoose: (key: string) => void;
}

/** The pieces of a shelf in words, in the order in which they come out; a press chooses one. */
export function PieceList({ pieces, judged, chosen, onChoose }: PieceListProps) {
  return (
    <ol className={styles.list}>
      {pieces.map(({ key, number, name, glaze }) => {
        const outcome = judged.get(key);
        return (
          <li key={key}>
            <button
              type="button"
              className={styles.piece}
              aria-current={key === chosen ? "true" : undefined}
              onClick={() => onChoose(key)}
            >
              <span className={styles.number}>{number}</span>
              <span className={styles.name}>
                {name}
                {(outcome?.faults.length || glaze) && (
                  <small>{outcome?.faults.length ? outcome.faults.map(faultName).join(", ") : glaze}</small>
                )}
              </span>
              {outcome ? (
                <span className={`${styles.grade} ${styles[outcome.grade]}`}>
                  {gradeSign(outcome.grade, 18)}
                  {GRADE_NAMES[outcome.grade]}
                </span>
              ) : (
                <span className={styles.open}>not judged</span>
              )}
            </button>
          </li>
        );
      })}
    </ol>
  );
}
