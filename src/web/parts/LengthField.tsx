import { type Ref, useState } from "react";
import { useSettings } from "../studio/hooks.ts";
import { Field, type FieldProps } from "./Field.tsx";
import { lengthText, readLengthText } from "./length-text.ts";

export interface LengthFieldProps extends FieldProps {
  readonly valueMm: number | null;
  /** Told of every length typed that will do; of null where the field was emptied. */
  readonly onChange: (mm: number | null) => void;
  readonly minMm?: number | undefined;
  readonly maxMm?: number | undefined;
  readonly autoFocus?: boolean | undefined;
  readonly ref?: Ref<HTMLInputElement> | undefined;
}

/** A field for a length: shows it in her units and takes any: `3 1/2 in`, `9 cm`, or a bare number in her units. */
export function LengthField(props: LengthFieldProps) {
  const { valueMm, onChange, minMm, maxMm } = props;
  const { lengthUnits } = useSettings();
  const [typed, setTyped] = useState<string | null>(null);
  const [left, setLeft] = useState(false);
  const limits = { minMm, maxMm };
  const shown = typed ?? lengthText(valueMm, lengthUnits);
  const read = typed === null ? { problem: null } : readLengthText(typed, lengthUnits, limits);
  return (
    // While she types, half a length is no mistake: it is called one when she leaves the field.
    <Field {...props} problem={props.problem ?? (left ? read.problem : null)}>
      {(ties) => (
        <input
          {...ties}
          ref={props.ref}
          inputMode={lengthUnits === "inches" ? "text" : "decimal"}
          autoComplete="off"
          disabled={props.isDisabled}
          // biome-ignore lint/a11y/noAutofocus: asked for by a dialog whose first field this is.
          autoFocus={props.autoFocus}
          data-first={props.autoFocus || undefined}
          value={shown}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            setTyped(event.target.value);
            setLeft(false);
            const now = readLengthText(event.target.value, lengthUnits, limits);
            if (now.problem === null) onChange(now.value);
          }}
          onBlur={() => {
            setLeft(true);
            if (read.problem === null) setTyped(null);
          }}
        />
      )}
    </Field>
  );
}
