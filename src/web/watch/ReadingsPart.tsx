import { Button } from "../parts/index.ts";
import { NoticesButton } from "./notices/NoticesButton.tsx";
import styles from "./Watch.module.css";

/** What opens from here. */
export type ReadingsDialog = "type" | "log" | "senders";

interface ReadingsPartProps {
  readonly isUnderWay: boolean;
  readonly onOpen: (dialog: ReadingsDialog) => void;
}

/** How readings come in, and whether this device tells of faults. */
export function ReadingsPart({ isUnderWay, onOpen }: ReadingsPartProps) {
  return (
    <section className={`${styles.part} ${styles.readings}`} aria-label="Readings and notices">
      <div className={styles.buttons}>
        <Button onPress={() => onOpen("type")} isDisabled={!isUnderWay}>
          Type a reading in
        </Button>
        <Button onPress={() => onOpen("log")}>Bring in a log</Button>
        <Button onPress={() => onOpen("senders")}>What sends them</Button>
      </div>
      <NoticesButton />
      <p className={styles.soft}>
        Readings only come in. Nothing goes out to the kiln: Wareboard watches and advises, and never switches it.
      </p>
    </section>
  );
}
