import { countOf } from "../../../studio/commands/in-words.ts";
import { BECOMES } from "../../../studio/records/becomes.ts";
import { Button, Sign } from "../../parts/index.ts";
import { BECOMES_WORDS } from "../judging/becomes.ts";
import { faultName } from "../judging/fault-words.ts";
import { GRADE_NAMES, gradeSign } from "../judging/grade-signs.tsx";
import { unjudged } from "../judging/judged.ts";
import { PieceList } from "../judging/PieceList.tsx";
import type { Unloading } from "../use-unloading.ts";
import styles from "./Summary.module.css";

interface SummaryStopProps {
  readonly unloading: Unloading;
  /** Looks at a piece again, by its key. */
  readonly onChoose: (key: string) => void;
}

/** What came out, and where it goes; one press keeps it. */
export function SummaryStop({ unloading, onChoose }: SummaryStopProps) {
  const { summary, record, pieces, judged, judge, firing } = unloading;
  const { progress, unseen, moved, faults, withoutBatch } = summary;
  const notGood = pieces.filter(({ key }) => (judged.get(key)?.grade ?? "good") !== "good");
  const isUnpacked = record.state === "unpacked";
  return (
    <div className={styles.summary}>
      <dl className={styles.grades}>
        {(["good", "second", "lost"] as const).map((grade) => (
          <div key={grade} className={styles[grade]}>
            <dt>
              {gradeSign(grade, 24)} {GRADE_NAMES[grade]}
            </dt>
            <dd>{progress[grade]}</dd>
          </div>
        ))}
      </dl>
      {faults.length > 0 && (
        <p>
          <strong>Faults:</strong> {faults.map(({ fault, count }) => `${faultName(fault)} ${count}`).join(", ")}
        </p>
      )}
      {notGood.length > 0 && <PieceList pieces={notGood} judged={judged} chosen={null} onChoose={onChoose} />}
      {unseen > 0 && !isUnpacked && (
        <div className={styles.unseen}>
          <p>
            {unseen === 1 ? "1 piece was" : `${unseen} pieces were`} not judged. Kept like this, they count as good.
          </p>
          <Button onPress={() => judge(unjudged(pieces, judged), "good")}>All the rest good</Button>
        </div>
      )}
      {isUnpacked ? (
        <p>
          <Sign kind="keeps">The load is unpacked, and its pieces have moved on.</Sign> A fault that shows later can
          still be told: choose the piece on its shelf.
        </p>
      ) : (
        <section>
          <h2>What moves where</h2>
          {moved.length === 0 && <p>None of these pieces is still kept among the waiting ware.</p>}
          {BECOMES.filter((becomes) => moved.some((each) => each.becomes === becomes)).map((becomes) => (
            <div key={becomes} className={styles.moved}>
              <h3>{BECOMES_WORDS[becomes]}</h3>
              <p>
                {moved
                  .filter((each) => each.becomes === becomes)
                  .map(({ count, name }) => countOf(count, name))
                  .join(", ")}
              </p>
            </div>
          ))}
          {withoutBatch > 0 && (
            <p className={styles.soft}>
              {countOf(withoutBatch, "piece")} of batches that are no longer kept: nothing moves for them.
            </p>
          )}
        </section>
      )}
      {firing.cones === undefined || firing.cones.length === 0 ? (
        <p className={styles.soft}>No witness cones were seen. They teach more than anything else about a kiln.</p>
      ) : null}
      {isUnpacked && (
        <div>
          <Button href={`/firings/${firing.id}`}>To the firing</Button>
        </div>
      )}
    </div>
  );
}
