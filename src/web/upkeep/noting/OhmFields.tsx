import { AddIcon, BinIcon, Button, IconButton, NumberField } from "../../parts/index.ts";
import styles from "./Noting.module.css";

interface OhmFieldsProps {
  readonly ohms: readonly (number | null)[];
  /** As they were last time, in the same order; null where they never were measured. */
  readonly last: readonly number[] | null;
  readonly onChange: (ohms: readonly (number | null)[]) => void;
}

const MOST = 40;

/** A field for each circuit's resistance, always in one order. */
export function OhmFields({ ohms, last, onChange }: OhmFieldsProps) {
  return (
    <div className={styles.ohms}>
      <p>Each circuit cold, in the same order every time: from the top down, say.</p>
      {ohms.map((value, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a circuit's place is all the name it has
        <div key={i} className={styles.circuit}>
          <NumberField
            label={`Circuit ${i + 1}, Ω`}
            isFraction
            min={0.5}
            max={10_000}
            value={value}
            hint={last?.[i] === undefined ? undefined : `Last time ${last[i]} Ω`}
            autoFocus={i === 0}
            onChange={(ohm) => onChange(ohms.with(i, ohm))}
          />
          {ohms.length > 1 && (
            <IconButton
              label={`Take out circuit ${i + 1}`}
              icon={<BinIcon />}
              onPress={() => onChange(ohms.filter((_, n) => n !== i))}
            />
          )}
        </div>
      ))}
      {ohms.length < MOST && (
        <div>
          <Button look="quiet" icon={<AddIcon />} onPress={() => onChange([...ohms, null])}>
            Another circuit
          </Button>
        </div>
      )}
    </div>
  );
}
