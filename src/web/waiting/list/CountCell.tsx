import { usePending } from "./use-pending.ts";
import styles from "./WareRow.module.css";

const MOST = 100_000;

export interface CountCellProps {
  readonly name: string;
  readonly count: number;
  readonly tabIndex: number;
  readonly onChange: (count: number) => void;
}

/** How many there are, with one less and one more. Quick presses count as one change. */
export function CountCell({ name, count, tabIndex, onChange }: CountCellProps) {
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
      <input
        className={styles.count}
        inputMode="numeric"
        tabIndex={tabIndex}
        aria-label={`How many: ${name}`}
        value={shown}
        onFocus={(event) => event.target.select()}
        onBlur={flush}
        onKeyDown={(event) => event.key === "Enter" && flush()}
        onChange={(event) => {
          const typed = Number(event.target.value);
          if (Number.isInteger(typed) && typed >= 1 && typed <= MOST) set(typed);
        }}
      />
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
