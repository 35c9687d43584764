import { useState } from "react";
import { CONES, type ConeName } from "../../firing/cones/cone.ts";
import { Button, Checkbox, ChoiceField, TextField } from "../parts/index.ts";
import styles from "./Materials.module.css";
import { type MaterialDraft, problemOf } from "./material-draft.ts";
import type { MaterialKind } from "./use-material-commands.ts";

const CONE_CHOICES: readonly { readonly id: ConeName | ""; readonly label: string }[] = [
  { id: "", label: "Not said" },
  ...CONES.map((cone) => ({ id: cone, label: `cone ${cone}` })),
];

export interface MaterialFormProps {
  readonly kind: MaterialKind;
  readonly begin: MaterialDraft;
  /** Names of the others, in small letters. */
  readonly taken: ReadonlySet<string>;
  readonly doneWords: string;
  readonly onDone: (draft: MaterialDraft) => void;
  readonly onLeave: () => void;
}

/** A clay body or glaze, written down where it stands in its list. */
export function MaterialForm({ kind, begin, taken, doneWords, onDone, onLeave }: MaterialFormProps) {
  const [draft, setDraft] = useState(begin);
  const [isAsked, setAsked] = useState(false);
  const set = (part: Partial<MaterialDraft>): void => setDraft((before) => ({ ...before, ...part }));
  const problem = problemOf(draft, taken);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem === null) onDone(draft);
        else setAsked(true);
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") onLeave();
      }}
    >
      <TextField
        label="Name"
        autoFocus
        value={draft.name}
        maxLength={120}
        problem={isAsked ? problem : null}
        onChange={(name) => set({ name })}
      />
      <div className={styles.cones}>
        <ChoiceField
          label={kind === "glazes" ? "Melts well from" : "Matures from"}
          options={CONE_CHOICES}
          value={draft.coolest}
          onChange={(coolest) => set({ coolest })}
        />
        <ChoiceField label="to" options={CONE_CHOICES} value={draft.hottest} onChange={(hottest) => set({ hottest })} />
      </div>
      {kind === "glazes" && (
        <Checkbox
          isSelected={draft.runs}
          onChange={(runs) => set({ runs })}
          hint="A piece wearing it should stand on a cookie"
        >
          It runs
        </Checkbox>
      )}
      <TextField label="Note" isLong value={draft.note} maxLength={2000} onChange={(note) => set({ note })} />
      <div className={styles.buttons}>
        <Button onPress={onLeave}>Leave it</Button>
        <Button look="main" isSubmit>
          {doneWords}
        </Button>
      </div>
    </form>
  );
}
