import { useId } from "react";
import styles from "./ChoiceField.module.css";
import { Field, type FieldProps } from "./Field.tsx";

export interface Choice<Id extends string> {
  readonly id: Id;
  readonly label: string;
}

export interface ChoiceFieldProps<Id extends string> extends FieldProps {
  readonly options: readonly Choice<Id>[];
  readonly value: Id;
  readonly onChange: (value: Id) => void;
  /** `list`: the device's own list. `row`: all of them side by side, for up to about five. */
  readonly look?: "list" | "row" | undefined;
}

/** One of several. */
export function ChoiceField<Id extends string>(props: ChoiceFieldProps<Id>) {
  if (props.look === "row") return <ChoiceRow {...props} />;
  const { options, value, onChange } = props;
  return (
    <Field {...props}>
      {(ties) => (
        <select
          {...ties}
          className={`${ties.className} ${styles.list}`}
          disabled={props.isDisabled}
          value={value}
          onChange={(event) => onChange(event.target.value as Id)}
        >
          {options.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

function ChoiceRow<Id extends string>(props: ChoiceFieldProps<Id>) {
  const { label, hint, problem, isLabelHidden, options, value, onChange, isDisabled } = props;
  const name = useId();
  return (
    <fieldset className={styles.row} disabled={isDisabled} aria-describedby={hint ? `${name}-hint` : undefined}>
      <legend className={isLabelHidden ? "heard" : styles.legend}>{label}</legend>
      {hint && (
        <span id={`${name}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      <div className={styles.choices}>
        {options.map(({ id, label: words }) => (
          <label key={id} className={styles.choice}>
            <input type="radio" name={name} value={id} checked={id === value} onChange={() => onChange(id)} />
            <span>{words}</span>
          </label>
        ))}
      </div>
      {problem && (
        <span className={styles.problem} role="alert">
          {problem}
        </span>
      )}
    </fieldset>
  );
}
