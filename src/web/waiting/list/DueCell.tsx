import { useLayoutEffect, useRef, useState } from "react";
import { MindIcon } from "../../parts/icons.tsx";
import { dueStretch, dueWords } from "../words/due-words.ts";
import styles from "./WareRow.module.css";

export interface DueCellProps {
  readonly name: string;
  readonly dueOn: string | null;
  readonly today: string;
  readonly tabIndex: number;
  readonly onChange: (dueOn: string | null) => void;
}

/** The due day in words; pressed, the device's own calendar. A field for a day is heavy: only one is ever there. */
export function DueCell({ name, dueOn, today, tabIndex, onChange }: DueCellProps) {
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const stretch = dueStretch(dueOn, today);
  if (isOpen) {
    const close = (day: string | null, withFocus: boolean) => {
      setOpen(false);
      if (day !== dueOn && (day === null || day >= FIRST_DAY)) onChange(day);
      if (withFocus) requestAnimationFrame(() => button.current?.focus());
    };
    return <DayInput name={name} dueOn={dueOn} onClose={close} />;
  }
  return (
    <button
      ref={button}
      type="button"
      className={`${styles.due} ${styles[stretch] ?? ""}`}
      tabIndex={tabIndex}
      aria-label={`Due ${dueWords(dueOn, today)}: ${name}`}
      onClick={() => setOpen(true)}
    >
      {stretch === "late" && <MindIcon size={18} />}
      {dueWords(dueOn, today)}
    </button>
  );
}

/** Half of a year that is being typed is no day anybody waits for. */
const FIRST_DAY = "2000-01-01";

interface DayInputProps {
  readonly name: string;
  readonly dueOn: string | null;
  readonly onClose: (day: string | null, withFocus: boolean) => void;
}

function DayInput({ name, dueOn, onClose }: DayInputProps) {
  const input = useRef<HTMLInputElement>(null);
  const [day, setDay] = useState(dueOn);
  useLayoutEffect(() => {
    input.current?.focus();
    try {
      input.current?.showPicker();
    } catch {
      // A browser that opens no calendar for us: the day is typed.
    }
  }, []);
  return (
    <input
      ref={input}
      type="date"
      className={styles.day}
      aria-label={`Due day: ${name}`}
      value={day ?? ""}
      onChange={(event) => setDay(event.target.value === "" ? null : event.target.value)}
      onKeyDown={(event) => {
        if (event.key === "Enter") onClose(day, true);
        if (event.key === "Escape") onClose(dueOn, true);
      }}
      onBlur={() => onClose(day, false)}
    />
  );
}
