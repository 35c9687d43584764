import { useState } from "react";
import { CONE_CHOICES } from "../batch/firing-choices.ts";
import { coneWords } from "../words/ware-words.ts";
import styles from "./WareRow.module.css";

export interface ConeCellProps {
  readonly name: string;
  /** "" where none is said. */
  readonly cone: string;
  readonly tabIndex: number;
  readonly onChange: (cone: string) => void;
}

/** The cone, changed where it stands. All the choices are put in only once she comes near: rows must scroll lightly. */
export function ConeCell({ name, cone, tabIndex, onChange }: ConeCellProps) {
  const [isNear, setNear] = useState(false);
  const near = () => setNear(true);
  const choices = isNear ? CONE_CHOICES : [{ id: cone, label: coneWords(cone) }];
  return (
    <select
      className={styles.cone}
      tabIndex={tabIndex}
      aria-label={`Cone: ${name}`}
      value={cone}
      onPointerEnter={near}
      onPointerDown={near}
      onFocus={near}
      onChange={(event) => onChange(event.target.value)}
    >
      {choices.map(({ id, label }) => (
        <option key={id} value={id}>
          {label}
        </option>
      ))}
    </select>
  );
}
