import { useState } from "react";
import type { Programme } from "../../../firing/programme/programme.ts";
import type { FaultName } from "../../../studio/records/faults.ts";
import { Button, DoneIcon } from "../../parts/index.ts";
import styles from "./FaultChoice.module.css";
import { FAULT_LOOKS, faultName, faultsFor } from "./fault-words.ts";

interface FaultChoiceProps {
  readonly kind: Programme["kind"];
  readonly faults: readonly FaultName[];
  readonly onChange: (faults: readonly FaultName[]) => void;
}

/** What is wrong with a piece, one or several, in the trade's words with what each looks like. */
export function FaultChoice({ kind, faults, onChange }: FaultChoiceProps) {
  const [showsAll, setShowsAll] = useState(false);
  const { first, others } = faultsFor(kind);
  const shown = showsAll ? [...first, ...others] : [...first, ...others.filter((fault) => faults.includes(fault))];
  const press = (fault: FaultName) =>
    onChange(faults.includes(fault) ? faults.filter((each) => each !== fault) : [...faults, fault]);
  return (
    <fieldset className={styles.faults}>
      <legend>What is wrong{faults.length > 0 && `: ${faults.map(faultName).join(", ")}`}</legend>
      <div className={styles.all}>
        {shown.map((fault) => (
          <button
            key={fault}
            type="button"
            className={styles.fault}
            aria-pressed={faults.includes(fault)}
            onClick={() => press(fault)}
          >
            <span className={styles.box}>{faults.includes(fault) && <DoneIcon size={20} />}</span>
            <span>
              <strong>{faultName(fault)}</strong>
              <small>{FAULT_LOOKS[fault]}</small>
            </span>
          </button>
        ))}
      </div>
      {shown.length < first.length + others.length && (
        <Button look="quiet" onPress={() => setShowsAll(true)}>
          Faults of a glaze too
        </Button>
      )}
    </fieldset>
  );
}
