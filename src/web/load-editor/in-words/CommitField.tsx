import { useState } from "react";
import { Field, type FieldProps } from "../../parts/index.ts";
import type { ReadText } from "../../parts/number-text.ts";

interface CommitFieldProps extends FieldProps {
  /** As it stands now. */
  readonly shown: string;
  readonly read: (text: string) => ReadText<number>;
  /** Told once she leaves the field or presses Enter, if she typed something that will do. */
  readonly onCommit: (value: number) => void;
}

/** A field whose number counts once she is done with it: each is one change, to be undone as one. */
export function CommitField(props: CommitFieldProps) {
  const { shown, read, onCommit } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const commit = () => {
    if (typed === null) return;
    const { value, problem: wrong } = read(typed);
    setProblem(wrong);
    if (value === null) return;
    setTyped(null);
    if (typed.trim() !== shown) onCommit(value);
  };
  return (
    <Field {...props} problem={problem}>
      {(ties) => (
        <input
          {...ties}
          autoComplete="off"
          disabled={props.isDisabled}
          value={typed ?? shown}
          onFocus={(event) => event.target.select()}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key === "Enter") commit();
            if (event.key !== "Escape" || typed === null) return;
            event.stopPropagation();
            setTyped(null);
            setProblem(null);
          }}
        />
      )}
    </Field>
  );
}
