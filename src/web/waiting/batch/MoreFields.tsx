import type { FiringKind } from "../../../firing/cones/firing-kind.ts";
import { Checkbox, ChoiceField, DayField, NumberField, Sign, TextField } from "../../parts/index.ts";
import styles from "./BatchFields.module.css";
import type { BatchDraft } from "./batch-draft.ts";
import { CookieField } from "./CookieField.tsx";
import { coneDoubt } from "./cone-doubt.ts";
import { CONE_CHOICES, KIND_CHOICES, STAGE_CHOICES } from "./firing-choices.ts";
import { GlazeField } from "./GlazeField.tsx";
import type { Materials } from "./materials.ts";
import { PartField } from "./PartField.tsx";
import { ProfileField } from "./ProfileField.tsx";

export interface MoreFieldsProps {
  readonly draft: BatchDraft;
  /** What it is called, for a sentence about it. */
  readonly name: string;
  readonly change: (part: Partial<BatchDraft>) => void;
  readonly materials: Materials;
}

/** Everything of a batch that is not its form, size, count and name. */
export function MoreFields({ draft, name, change, materials }: MoreFieldsProps) {
  const bodies = [{ id: "", label: "Not said" }, ...materials.clayBodies.map(({ id, name }) => ({ id, label: name }))];
  const doubt = coneDoubt(draft, name, materials);
  return (
    <div className={styles.column}>
      <div className={styles.two}>
        <ChoiceField
          label="It is"
          options={STAGE_CHOICES}
          value={draft.stage}
          onChange={(stage) => change({ stage })}
        />
        <ChoiceField
          label="Waits for"
          options={KIND_CHOICES.map(({ id, label }) => ({ id, label: id === "" ? label : `${label} firing` }))}
          value={draft.firingKind ?? ""}
          onChange={(kind) => change({ firingKind: kind === "" ? null : (kind as FiringKind) })}
        />
        <ChoiceField label="Cone" options={CONE_CHOICES} value={draft.cone} onChange={(cone) => change({ cone })} />
        <DayField label="Due" value={draft.dueOn} onChange={(dueOn) => change({ dueOn })} />
        <GlazeField draft={draft} change={change} glazes={materials.glazes} />
        <ChoiceField
          label="Clay body"
          options={bodies}
          value={draft.clayBodyId ?? ""}
          onChange={(id) => change({ clayBodyId: id === "" ? null : id })}
        />
      </div>
      {doubt && <Sign kind="mind">{doubt}</Sign>}
      <CookieField draft={draft} change={change} glazes={materials.glazes} />
      <Checkbox
        isSelected={draft.mustFire}
        onChange={(mustFire) => change({ mustFire })}
        hint="Goes in before anything else is chosen"
      >
        Must fire
      </Checkbox>
      <NumberField
        label="What firing one is worth"
        hint="Beside other pieces, where not all can go in. An ordinary piece is 1."
        value={draft.value}
        min={0}
        max={1e6}
        isFraction
        onChange={(value) => change({ value: value ?? 1 })}
      />
      <PartField part="handle" draft={draft} change={change} />
      <PartField part="spout" draft={draft} change={change} />
      <ProfileField draft={draft} change={change} />
      <NumberField
        label="One weighs, in kg"
        hint="Left out, it is reckoned from its size"
        value={draft.massKg}
        min={0.001}
        max={200}
        isFraction
        onChange={(massKg) => change({ massKg })}
      />
      <TextField
        label="Note"
        hint="Whose it is, what was promised"
        isLong
        maxLength={2000}
        value={draft.ownerNote}
        onChange={(ownerNote) => change({ ownerNote })}
      />
    </div>
  );
}
