import { type Ref, useState } from "react";
import { IconButton } from "./Button.tsx";
import styles from "./Field.module.css";
import { Field, type FieldProps } from "./Field.tsx";
import { AddIcon, RemoveIcon } from "./icons.tsx";
import { readNumberText } from "./number-text.ts";

export interface NumberFieldProps extends FieldProps {
  readonly value: number | null;
  /** Told of every number typed that will do; of null where the field was emptied. */
  readonly onChange: (value: number | null) => void;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** Any number. Left out: whole numbers alone. */
  readonly isFraction?: boolean | undefined;
  /** Buttons for one less and one more. */
  readonly hasSteps?: boolean | undefined;
  readonly autoFocus?: boolean | undefined;
  readonly ref?: Ref<HTMLInputElement> | undefined;
}

/** A field for a number: a count, a percentage. Lengths have their own. */
export function NumberField(props: NumberFieldProps) {
  const { value, onChange, min, max, isFraction = false, hasSteps = false } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const limits = { min, max, isWhole: !isFraction };
  const shown = typed ?? (value === null ? "" : String(value));
  const read = readNumberText(shown, limits);
  const step = (by: number) => {
    setTyped(null);
    onChange(Math.min(max ?? Number.POSITIVE_INFINITY, Math.max(min ?? Number.NEGATIVE_INFINITY, (value ?? 0) + by)));
  };
  return (
    <Field {...props} problem={props.problem ?? read.problem}>
      {(ties) => {
        const input = (
          <input
            {...ties}
            ref={props.ref}
            inputMode={isFraction ? "decimal" : "numeric"}
            autoComplete="off"
            disabled={props.isDisabled}
            // biome-ignore lint/a11y/noAutofocus: asked for by a dialog whose first field this is.
            autoFocus={props.autoFocus}
            data-first={props.autoFocus || undefined}
            value={shown}
            onFocus={(event) => event.target.select()}
            onChange={(event) => {
              setTyped(event.target.value);
              const now = readNumberText(event.target.value, limits);
              if (now.problem === null) onChange(now.value);
            }}
            onBlur={() => {
              if (read.problem === null) setTyped(null);
            }}
            onKeyDown={(event) => {
              if (event.key === "ArrowUp" || event.key === "ArrowDown") {
                event.preventDefault();
                step(event.key === "ArrowUp" ? 1 : -1);
              }
            }}
          />
        );
        if (!hasSteps) return input;
        return (
          <div className={styles.steps}>
            <IconButton
              look="plain"
              label={`One less: ${props.label}`}
              icon={<RemoveIcon />}
              isDisabled={props.isDisabled || (min !== undefined && (value ?? 0) <= min)}
              onPress={() => step(-1)}
            />
            {input}
            <IconButton
              look="plain"
              label={`One more: ${props.label}`}
              icon={<AddIcon />}
              isDisabled={props.isDisabled || (max !== undefined && (value ?? 0) >= max)}
              onPress={() => step(1)}
            />
          </div>
        );
      }}
    </Field>
  );
}
