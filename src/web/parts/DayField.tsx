import { Field, type FieldProps } from "./Field.tsx";

export interface DayFieldProps extends FieldProps {
  /** 2026-11-25, or null. */
  readonly value: string | null;
  readonly onChange: (day: string | null) => void;
  readonly min?: string | undefined;
  readonly max?: string | undefined;
}

/** A field for a day on the calendar: the device's own, which speaks her language. */
export function DayField(props: DayFieldProps) {
  const { value, onChange, min, max } = props;
  return (
    <Field {...props}>
      {(ties) => (
        <input
          {...ties}
          type="date"
          disabled={props.isDisabled}
          value={value ?? ""}
          min={min}
          max={max}
          onChange={(event) => onChange(event.target.value === "" ? null : event.target.value)}
        />
      )}
    </Field>
  );
}
