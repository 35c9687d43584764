import { useState } from "react";
import { MindIcon } from "../../parts/icons.tsx";
import { dueStretch, dueWords } from "../words/due-words.ts";
import { usePending } from "./use-pending.ts";
import styles from "./WareRow.module.css";

export interface DueCellProps {
  readonly name: string;
  readonly dueOn: string | null;
  readonly today: string;
  readonly tabIndex: number;
  readonly onChange: (dueOn: string | null) => void;
}

/** Half of a year that is being typed is no day anybody waits for. */
const FIRST_DAY = "2000-01-01";

/** The due day in words; pressed, the device's own calendar. */
export function DueCell({ name, dueOn, today, tabIndex, onChange }: DueCellProps) {
  const [isTyping, setTyping] = useState(false);
  const { shown, set, flush } = usePending(dueOn, (day) => {
    if (day !== dueOn && (day === null || day >= FIRST_DAY)) onChange(day);
  });
  const stretch = dueStretch(shown, today);
  return (
    <label className={`${styles.due} ${styles[stretch]} ${isTyping ? styles.typing : ""}`}>
      <span className={styles.dueWords} aria-hidden="true">
        {stretch === "late" && <MindIcon size={18} />}
        {dueWords(shown, today)}
      </span>
      <input
        type="date"
        tabIndex={tabIndex}
        aria-label={`Due day: ${name}`}
        value={shown ?? ""}
        onChange={(event) => set(event.target.value === "" ? null : event.target.value)}
        onClick={(event) => {
          // The whole of it opens the calendar, not its small sign alone; where a browser cannot, it is typed.
          try {
            event.currentTarget.showPicker();
          } catch {
            setTyping(true);
          }
        }}
        onKeyDown={(event) => {
          if (event.key === "Enter") event.currentTarget.blur();
          else if (event.key !== "Tab") setTyping(true);
        }}
        onBlur={() => {
          setTyping(false);
          flush();
        }}
      />
    </label>
  );
}
