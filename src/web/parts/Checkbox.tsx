import type { ReactNode } from "react";
import styles from "./Field.module.css";

export interface CheckboxProps {
  readonly children: ReactNode;
  readonly isSelected: boolean;
  readonly onChange: (isSelected: boolean) => void;
  readonly hint?: ReactNode | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Some of what it stands for and not all. */
  readonly isMixed?: boolean | undefined;
  /** The words are said to ears alone: where the place tells enough, as in a table. */
  readonly isLabelHidden?: boolean | undefined;
}

/** A box to tick. */
export const Checkbox = (props: CheckboxProps) => <Tick {...props} />;

/** On or off, at once. */
export const Switch = (props: CheckboxProps) => <Tick {...props} role="switch" />;

function Tick(props: CheckboxProps & { readonly role?: "switch" }) {
  const { children, isSelected, onChange, hint, isDisabled, isMixed = false, isLabelHidden = false, role } = props;
  return (
    <label className={styles.check}>
      <input
        type="checkbox"
        role={role}
        disabled={isDisabled}
        checked={isSelected}
        ref={(box) => {
          if (box) box.indeterminate = isMixed;
        }}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span className={isLabelHidden ? "heard" : styles.checkWords}>
        <span>{children}</span>
        {hint && <span className={styles.hint}>{hint}</span>}
      </span>
    </label>
  );
}
