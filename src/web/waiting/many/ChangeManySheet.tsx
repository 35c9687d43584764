import { useState } from "react";
import { Button, ChoiceField, DayField, Dialog, TextField } from "../../parts/index.ts";
import { useClayBodies, useGlazes } from "../../studio/hooks.ts";
import styles from "../batch/BatchFields.module.css";
import type { WareChange } from "../batch/batch-change.ts";
import { CONE_CHOICES, KIND_CHOICES, STAGE_CHOICES } from "../batch/firing-choices.ts";
import { batches } from "../words/ware-words.ts";
import { type Alike, changeToAlike, GLAZE_IN_WORDS, KEEP_ALL } from "./alike.ts";

const KEEP = { id: "keep", label: "As it is" } as const;

export interface ChangeManySheetProps {
  readonly count: number;
  readonly onClose: () => void;
  readonly onChange: (change: WareChange) => void;
}

/** Changes many batches at once: what is not touched stays as it is with each. */
export default function ChangeManySheet({ count, onClose, onChange }: ChangeManySheetProps) {
  const [alike, setAlike] = useState(KEEP_ALL);
  const set = (part: Partial<Alike>): void => setAlike((before) => ({ ...before, ...part }));
  const glazes = useGlazes() ?? [];
  const bodies = useClayBodies() ?? [];
  const named = (records: readonly { readonly id: string; readonly name: string }[]) =>
    records.map(({ id, name }) => ({ id, label: name }));
  const change = changeToAlike(alike);
  return (
    <Dialog
      title={`Change ${batches(count)}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Leave them</Button>
          <Button look="main" isDisabled={change === null} onPress={() => change && onChange(change)}>
            Change
          </Button>
        </>
      }
    >
      <div className={styles.two}>
        <ChoiceField
          label="Waiting for"
          options={[KEEP, ...KIND_CHOICES]}
          value={alike.firingKind}
          onChange={(firingKind) => set({ firingKind })}
        />
        <ChoiceField
          label="Cone"
          options={[KEEP, ...CONE_CHOICES]}
          value={alike.cone}
          onChange={(cone) => set({ cone })}
        />
        <ChoiceField
          label="They are"
          options={[KEEP, ...STAGE_CHOICES]}
          value={alike.stage}
          onChange={(stage) => set({ stage })}
        />
        <ChoiceField
          label="Clay body"
          options={[KEEP, ...named(bodies), { id: "", label: "Not said" }]}
          value={alike.clayBody}
          onChange={(clayBody) => set({ clayBody })}
        />
        <ChoiceField
          label="Glaze"
          options={[
            KEEP,
            ...named(glazes),
            { id: GLAZE_IN_WORDS, label: "Another, in words" },
            { id: "", label: "None" },
          ]}
          value={alike.glaze}
          onChange={(glaze) => set({ glaze })}
        />
        {alike.glaze === GLAZE_IN_WORDS && (
          <TextField
            label="Glaze in words"
            value={alike.glazeWords}
            maxLength={120}
            onChange={(glazeWords) => set({ glazeWords })}
          />
        )}
        <ChoiceField
          label="Due"
          options={[KEEP, { id: "day", label: "On a day" }, { id: "none", label: "No day" }]}
          value={alike.due}
          onChange={(due) => set({ due })}
        />
        {alike.due === "day" && <DayField label="Due day" value={alike.dueOn} onChange={(dueOn) => set({ dueOn })} />}
      </div>
    </Dialog>
  );
}
