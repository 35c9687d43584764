import { type ReactNode, useRef } from "react";
import { TextField } from "../../parts/index.ts";
import { useClayBodies, useGlazes, useSettings } from "../../studio/hooks.ts";
import { PieceDrawing } from "../drawing/PieceDrawing.tsx";
import { useToday } from "../words/use-today.ts";
import styles from "./BatchFields.module.css";
import { type BatchDraft, type Missing, missingOf, nameOf } from "./batch-draft.ts";
import { batchSummary } from "./batch-summary.ts";
import { FormPicker } from "./FormPicker.tsx";
import { MoreFields } from "./MoreFields.tsx";
import { SizeFields } from "./SizeFields.tsx";
import { seenOf } from "./seen.ts";

export interface BatchFieldsProps {
  readonly draft: BatchDraft;
  readonly change: (part: Partial<BatchDraft>) => void;
  /** Names other batches have. */
  readonly taken: ReadonlySet<string>;
  /** Ask for what is missing. */
  readonly isAsked: boolean;
  readonly onDone: () => void;
  /** Begin with the rest unfolded. */
  readonly isUnfolded?: boolean;
  /** Under the drawing. */
  readonly beside?: ReactNode;
}

const NOTHING: readonly never[] = [];
const NONE_MISSING: Missing = {};

/** All that is written down of a batch: form, sizes and count first; the rest folded, with what it holds in one line. */
export function BatchFields(props: BatchFieldsProps) {
  const { draft, change, taken, isAsked, onDone, isUnfolded = false, beside } = props;
  const { lengthUnits } = useSettings();
  const materials = { clayBodies: useClayBodies() ?? NOTHING, glazes: useGlazes() ?? NOTHING };
  const today = useToday();
  const firstSize = useRef<HTMLInputElement>(null);
  const missing = missingOf(draft);
  const name = nameOf(draft, lengthUnits, taken);
  const asked = isAsked ? missing : NONE_MISSING;
  const hasSize = missing.acrossMm === undefined && missing.heightMm === undefined;
  return (
    <div className={styles.columns}>
      <div className={styles.column}>
        <FormPicker
          value={draft.form}
          onChange={(form) => change({ form })}
          onPicked={() => firstSize.current?.focus()}
        />
        <SizeFields draft={draft} change={change} asked={asked} onDone={onDone} firstField={firstSize} />
      </div>
      <PieceDrawing seen={seenOf(draft)} units={lengthUnits} isMeasured={hasSize} />
      <div className={styles.column}>
        <TextField
          label="Name"
          value={draft.name ?? name}
          problem={asked.name}
          maxLength={120}
          onChange={(typed) => change({ name: typed })}
          onBlur={() => draft.name?.trim() === "" && change({ name: null })}
        />
        <details className={styles.more} open={isUnfolded}>
          <summary>
            More
            <span className={styles.summary}>{batchSummary(draft, materials, today)}</span>
          </summary>
          <MoreFields draft={draft} name={name} change={change} materials={materials} />
        </details>
      </div>
      {beside && <div className={styles.column}>{beside}</div>}
    </div>
  );
}
