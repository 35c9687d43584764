import { type KeyboardEvent, type Ref, useRef } from "react";
import { Button, LengthField, NumberField } from "../../parts/index.ts";
import styles from "./BatchFields.module.css";
import { type BatchDraft, hasSides, type Missing } from "./batch-draft.ts";

export interface SizeFieldsProps {
  readonly draft: BatchDraft;
  readonly change: (part: Partial<BatchDraft>) => void;
  /** What to ask for, once she has pressed the button with something still open. */
  readonly asked: Missing;
  /** Enter in the last field. */
  readonly onDone: () => void;
  readonly firstField?: Ref<HTMLInputElement>;
}

const LONGEST_MM = 5000;

/** The numbers a batch is: its size and how many. Enter goes from one to the next, and from the last adds the batch. */
export function SizeFields({ draft, change, asked, onDone, firstField }: SizeFieldsProps) {
  const row = useRef<HTMLDivElement>(null);
  const sides = hasSides(draft);
  const enter = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    const fields = [...(row.current?.querySelectorAll("input") ?? [])];
    const next = fields[fields.indexOf(event.target) + 1];
    if (next) next.focus();
    else onDone();
  };
  const acrossLabel = sides ? "Long" : draft.isAcrossCorners ? "Across corners" : "Across";
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a short way for the keyboard between the fields inside.
    <div ref={row} className={styles.sizes} onKeyDown={enter}>
      <LengthField
        ref={firstField}
        label={acrossLabel}
        valueMm={draft.acrossMm}
        maxMm={LONGEST_MM}
        problem={asked.acrossMm}
        onChange={(acrossMm) => change({ acrossMm })}
      />
      {sides && (
        <LengthField
          label="Wide"
          valueMm={draft.shorterMm}
          maxMm={LONGEST_MM}
          onChange={(shorterMm) => change({ shorterMm })}
        />
      )}
      <LengthField
        label="Tall"
        valueMm={draft.heightMm}
        maxMm={LONGEST_MM}
        problem={asked.heightMm}
        onChange={(heightMm) => change({ heightMm })}
      />
      <NumberField
        label="How many"
        value={draft.count}
        min={1}
        max={100000}
        problem={asked.count}
        onChange={(count) => change({ count })}
      />
      {draft.isAcrossCorners && (
        <Button look="quiet" onPress={() => change({ isAcrossCorners: false, acrossMm: null, shorterMm: null })}>
          Measure its sides
        </Button>
      )}
    </div>
  );
}
