import type { Ref } from "react";
import { Field, type FieldProps } from "./Field.tsx";

export interface TextFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly placeholder?: string | undefined;
  /** More than one line. */
  readonly isLong?: boolean | undefined;
  readonly isSecret?: boolean | undefined;
  readonly isSearch?: boolean | undefined;
  readonly maxLength?: number | undefined;
  readonly autoFocus?: boolean | undefined;
  readonly autoComplete?: string | undefined;
  readonly onBlur?: (() => void) | undefined;
  readonly ref?: Ref<HTMLInputElement> | undefined;
}

/** A field for words. */
export function TextField(props: TextFieldProps) {
  const { value, onChange, placeholder, isLong, isSecret, isSearch, maxLength, autoFocus, onBlur } = props;
  return (
    <Field {...props}>
      {(ties) => {
        const shared = {
          ...ties,
          value,
          placeholder,
          maxLength,
          onBlur,
          disabled: props.isDisabled,
          autoComplete: props.autoComplete ?? "off",
          autoFocus,
          "data-first": autoFocus || undefined,
        };
        if (isLong) return <textarea {...shared} onChange={(event) => onChange(event.target.value)} />;
        const type = isSecret ? "password" : isSearch ? "search" : "text";
        return <input {...shared} ref={props.ref} type={type} onChange={(event) => onChange(event.target.value)} />;
      }}
    </Field>
  );
}
