import { type FormName, formOutline } from "../../../ware/forms.ts";
import { PieceIcon } from "../drawing/PieceIcon.tsx";
import { FORM_WORDS, FORMS } from "../words/ware-words.ts";
import styles from "./FormPicker.module.css";
import { TYPICAL_SIZE } from "./typical-size.ts";

const DRAWN = Object.fromEntries(
  FORMS.map((form) => {
    const { diameterMm, heightMm } = TYPICAL_SIZE[form];
    return [form, { form, ...formOutline(form, TYPICAL_SIZE[form]), diameterMm, heightMm }];
  }),
) as Record<FormName, Parameters<typeof PieceIcon>[0]["seen"]>;

export interface FormPickerProps {
  readonly value: FormName | null;
  readonly onChange: (form: FormName) => void;
  /** Pressed with finger or pointer, or Enter: on to the sizes. Arrow keys look through the forms first. */
  readonly onPicked?: (() => void) | undefined;
}

/** Every form, drawn large enough to press with clay on the thumb. */
export function FormPicker({ value, onChange, onPicked }: FormPickerProps) {
  return (
    <fieldset className={styles.forms}>
      <legend className="heard">Form</legend>
      {FORMS.map((form) => (
        <label key={form} className={styles.form}>
          <input
            type="radio"
            name="form"
            value={form}
            checked={form === value}
            onChange={() => onChange(form)}
            onClick={(event) => event.detail > 0 && onPicked?.()}
            onKeyDown={(event) => event.key === "Enter" && onPicked?.()}
          />
          <span className={form === "other" ? `${styles.face} ${styles.other}` : styles.face}>
            <PieceIcon seen={DRAWN[form]} sizePx={44} />
            <span>{FORM_WORDS[form]}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
