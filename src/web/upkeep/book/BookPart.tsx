import { useId, useState } from "react";
import type { UpkeepRecord } from "../../../studio/records/upkeep-record.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { undoLast } from "../../loads/undo-last.ts";
import { BinIcon, Button, IconButton, tell } from "../../parts/index.ts";
import { useCommand } from "../../studio/hooks.ts";
import { entryWords } from "../noting/work-words.ts";
import styles from "../Upkeep.module.css";

const SHOWN = 6;

/** What was done, the newest first. */
export function BookPart({ book }: { readonly book: readonly UpkeepRecord[] }) {
  const id = useId();
  const command = useCommand();
  const [showsAll, setShowsAll] = useState(false);
  const newest = [...book].sort((a, b) => (a.at < b.at ? 1 : -1));
  const shown = showsAll ? newest : newest.slice(0, SHOWN);
  const remove = (entry: UpkeepRecord) => {
    // A refusal is told by the frame, and the book is read again.
    void command("remove-upkeep", { id: entry.id }, (cache) => cache.remove("upkeep", entry.id));
    tell(`Took out: ${entryWords(entry)}`, () => void undoLast("kilns"));
  };
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>What was done</h2>
      {newest.length === 0 && (
        <p>Nothing was noted yet. Each thing takes two presses, over here or under its own part.</p>
      )}
      <ul className={styles.list}>
        {shown.map((entry) => (
          <li key={entry.id} className={styles.entry}>
            <div>
              {entryWords(entry)}
              {entry.note !== "" && <p>{entry.note}</p>}
              <p className={styles.soft}>{dayClockWords(entry.at)}</p>
            </div>
            <IconButton
              label={`Take out: ${entryWords(entry)}, ${dayClockWords(entry.at)}`}
              icon={<BinIcon />}
              onPress={() => remove(entry)}
            />
          </li>
        ))}
      </ul>
      {newest.length > shown.length && (
        <div>
          <Button look="quiet" onPress={() => setShowsAll(true)}>
            Show all {newest.length}
          </Button>
        </div>
      )}
    </section>
  );
}
