import { Field, type FieldProps } from "../../parts/index.ts";
import { localField, momentOfField } from "../words/device-time.ts";

export interface MomentFieldProps extends FieldProps {
  /** In UTC, or null. */
  readonly value: string | null;
  readonly onChange: (moment: string | null) => void;
  readonly min?: string | undefined;
  readonly max?: string | undefined;
}

/** A field for a day and a time of day by this device's clock: the device's own, which speaks her language. */
export function MomentField(props: MomentFieldProps) {
  const { value, onChange, min, max, isDisabled } = props;
  return (
    <Field {...props}>
      {(ties) => (
        <input
          {...ties}
          type="datetime-local"
          disabled={isDisabled}
          value={localField(value)}
          min={min === undefined ? undefined : localField(min)}
          max={max === undefined ? undefined : localField(max)}
          onChange={(event) => onChange(momentOfField(event.target.value))}
        />
      )}
    </Field>
  );
}
