import { useState } from "react";
import { usePending } from "./use-pending.ts";
import styles from "./WareRow.module.css";

const MOST = 100_000;

export interface CountCellProps {
  readonly name: string;
  readonly count: number;
  readonly tabIndex: number;
  readonly onChange: (count: number) => void;
}

/** How many there are, with one less and one more. Quick presses count as one change; the number pressed can be typed. */
export function CountCell({ name, count, tabIndex, onChange }: CountCellProps) {
  const [isTyping, setTyping] = useState(false);
  const { shown, set, flush } = usePending(count, (next) => next !== count && onChange(next));
  const step = (by: number): void => set(Math.min(MOST, Math.max(1, shown + by)));
  return (
    <>
      <button
        type="button"
        className={styles.step}
        tabIndex={tabIndex}
        disabled={shown <= 1}
        aria-label={`One less: ${name}`}
        onClick={() => step(-1)}
      >
        −
      </button>
      {isTyping ? (
        <CountInput
          name={name}
          count={shown}
          onChange={set}
          onClose={() => {
            setTyping(false);
            flush();
          }}
        />
      ) : (
        <button
          type="button"
          className={styles.count}
          tabIndex={tabIndex}
          aria-label={`${shown} of ${name}`}
          onClick={() => setTyping(true)}
        >
          {shown}
        </button>
      )}
      <button
        type="button"
        className={styles.step}
        tabIndex={tabIndex}
        aria-label={`One more: ${name}`}
        onClick={() => step(1)}
      >
        +
      </button>
    </>
  );
}

interface CountInputProps {
  readonly name: string;
  readonly count: number;
  readonly onChange: (count: number) => void;
  readonly onClose: () => void;
}

function CountInput({ name, count, onChange, onClose }: CountInputProps) {
  const [typed, setTyped] = useState(String(count));
  return (
    <input
      className={styles.count}
      inputMode="numeric"
      autoComplete="off"
      // biome-ignore lint/a11y/noAutofocus: it takes the place of the number she pressed.
      autoFocus
      aria-label={`How many: ${name}`}
      value={typed}
      onFocus={(event) => event.target.select()}
      onBlur={onClose}
      onKeyDown={(event) => event.key === "Enter" && onClose()}
      onChange={(event) => {
        setTyped(event.target.value);
        const number = Number(event.target.value);
        if (Number.isInteger(number) && number >= 1 && number <= MOST) onChange(number);
      }}
    />
  );
}
