import { type ReactNode, useId } from "react";
import styles from "./Field.module.css";
import { MindIcon } from "./icons.tsx";

/** What every field has. */
export interface FieldProps {
  readonly label: string;
  /** One line under the label: what would do, or why it is asked. */
  readonly hint?: ReactNode | undefined;
  /** What is wrong with it, in words; nothing where it is right. */
  readonly problem?: string | null | undefined;
  readonly isDisabled?: boolean | undefined;
  /** The label is said to ears alone: where the place tells enough, as in a table. */
  readonly isLabelHidden?: boolean | undefined;
  /** A few letters or digits are all that goes in. */
  readonly isShort?: boolean | undefined;
}

/** What the field itself must carry so that its words belong to it. */
export interface FieldTies {
  readonly id: string;
  readonly className: string;
  readonly "aria-describedby": string | undefined;
  readonly "aria-invalid": boolean | undefined;
}

/** A label, a hint, the field and what is wrong with it, tied together. */
export function Field(props: FieldProps & { readonly children: (ties: FieldTies) => ReactNode }) {
  const { label, hint, problem, isLabelHidden = false, isShort = false, children } = props;
  const id = useId();
  const hasHint = hint !== undefined && hint !== null && hint !== "";
  const described = [hasHint ? `${id}-hint` : "", problem ? `${id}-problem` : ""].filter(Boolean).join(" ");
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={isLabelHidden ? "heard" : styles.label}>
        {label}
      </label>
      {hasHint && (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      {children({
        id,
        className: isShort ? `${styles.input} ${styles.short}` : (styles.input ?? ""),
        "aria-describedby": described === "" ? undefined : described,
        "aria-invalid": problem ? true : undefined,
      })}
      {problem && (
        <span id={`${id}-problem`} className={styles.problem} role="alert">
          <MindIcon size={18} /> {problem}
        </span>
      )}
    </div>
  );
}
