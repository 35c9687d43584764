import { readNumberText } from "../../parts/number-text.ts";
import { useSettings } from "../../studio/hooks.ts";
import { CommitField } from "./CommitField.tsx";
import styles from "./InWords.module.css";
import { readSignedLength, signedLengthText } from "./signed-length.ts";

interface PlaceFieldsProps {
  /** Whose place it is, for ears. */
  readonly of: string;
  readonly xMm: number;
  readonly yMm: number;
  /** Left out where turning it changes nothing. */
  readonly turnDeg?: number | undefined;
  readonly onChange: (place: { readonly xMm?: number; readonly yMm?: number; readonly turnDeg?: number }) => void;
}

/** A place in numbers, each changed by itself: across, toward the far side, turned. */
export function PlaceFields({ of, xMm, yMm, turnDeg, onChange }: PlaceFieldsProps) {
  const { lengthUnits } = useSettings();
  const read = (text: string) => readSignedLength(text, lengthUnits);
  return (
    <fieldset className={styles.place}>
      <legend className="heard">Where {of} stands</legend>
      <CommitField
        label="To the right"
        shown={signedLengthText(xMm, lengthUnits)}
        read={read}
        onCommit={(value) => onChange({ xMm: value })}
      />
      <CommitField
        label="To the back"
        shown={signedLengthText(yMm, lengthUnits)}
        read={read}
        onCommit={(value) => onChange({ yMm: value })}
      />
      {turnDeg !== undefined && (
        <CommitField
          label="Turned, °"
          shown={String(Math.round(turnDeg * 10) / 10)}
          read={(text) => {
            const { value, problem } = readNumberText(text.replace(/^[−–]/, "-"), {
              min: -360,
              max: 360,
              isWhole: false,
            });
            return { value, problem: value === null ? (problem ?? "A number of degrees is wanted here.") : null };
          }}
          onCommit={(value) => onChange({ turnDeg: value })}
        />
      )}
    </fieldset>
  );
}
