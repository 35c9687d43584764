import { useState } from "react";
import { Field, type FieldProps } from "../parts/index.ts";
import { directionText, readDirection } from "./direction.ts";

interface DirectionFieldProps extends FieldProps {
  readonly angleDeg: number;
  /** Told of every direction typed that is one. */
  readonly onChange: (angleDeg: number) => void;
}

/** A place round the wall, typed as on a clock: `4`, `4:30`; or in degrees: `330°`. */
export function DirectionField(props: DirectionFieldProps) {
  const { angleDeg, onChange } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [left, setLeft] = useState(false);
  const isWrong = typed !== null && readDirection(typed) === null;
  const problem = left && isWrong ? `“${typed?.trim()}” is no direction. Type such as 4:30, or 330°.` : null;
  return (
    <Field {...props} problem={props.problem ?? problem}>
      {(ties) => (
        <input
          {...ties}
          autoComplete="off"
          value={typed ?? directionText(angleDeg)}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            setTyped(event.target.value);
            setLeft(false);
            const read = readDirection(event.target.value);
            if (read !== null) onChange(read);
          }}
          onBlur={() => {
            setLeft(true);
            if (!isWrong) setTyped(null);
          }}
        />
      )}
    </Field>
  );
}
