import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useEffect, useState } from "react";
import { usualCones } from "../../../firing/cones/firing-kind.ts";
import type { Ending } from "../../../firing/programme/draft-programme.ts";
import { programmeHours } from "../../../firing/programme/ideal-curve.ts";
import type { Dryness, Pace } from "../../../firing/programme/pace.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import {
  Checkbox,
  type Choice,
  ChoiceField,
  LengthField,
  NumberField,
  Problem,
  Sign,
  Spinner,
} from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { askKiln } from "../foretelling/ask-kiln.ts";
import type { LoadedKiln } from "../foretelling/kiln-answers.ts";
import { CONE_CHOICES, type WrittenWish } from "../prepare/usual-wish.ts";
import { hoursLong } from "../words/figures.ts";
import { KIND_CHOICES } from "./kind-choices.ts";
import styles from "./Programmes.module.css";
import { ProgrammeTable } from "./ProgrammeTable.tsx";

const PACE_CHOICES: readonly Choice<Pace>[] = [
  { id: "slow", label: "Slow" },
  { id: "medium", label: "Medium" },
  { id: "fast", label: "Fast" },
];
const DRYNESS_CHOICES: readonly Choice<Dryness>[] = [
  { id: "bone-dry", label: "Bone dry" },
  { id: "dry-to-touch", label: "Dry to the touch" },
  { id: "damp", label: "Damp" },
];
const ENDING_CHOICES: readonly Choice<Ending>[] = [
  { id: "natural", label: "Cools by itself" },
  { id: "drop-and-hold", label: "Dropped and held" },
  { id: "slow-cool", label: "Cooled slowly" },
];
const USUAL_CONES = { bisque: "04", glaze: "6", "once-fired": "6", lustre: "018" } as const;

interface WriteFormProps {
  readonly first: WrittenWish;
  /** Aimed in this kiln with this load; null for one that follows any climb. */
  readonly kiln: LoadedKiln | null;
  /** Told of each that was written; null while it is at work, or cannot be. */
  readonly onWritten: (programme: Programme | null) => void;
}

/** A programme written for a cone, a kind and a pace; every change writes it anew. */
export function WriteForm({ first, kiln, onWritten }: WriteFormProps) {
  const { temperatureUnits: units } = useSettings();
  const [wish, setWish] = useState<WrittenWish>(first);
  const written = useQuery({
    queryKey: ["written", kiln?.key, wish],
    queryFn: () => askKiln({ kind: "write", kiln, wish }),
    placeholderData: keepPreviousData,
    gcTime: 60_000,
    retry: false,
  });
  const programme = written.isError ? null : (written.data?.programme ?? null);
  useEffect(
    () => onWritten(written.isPlaceholderData ? null : programme),
    [programme, written.isPlaceholderData, onWritten],
  );
  const isRaw = wish.kind === "bisque" || wish.kind === "once-fired";
  const set = (change: Partial<WrittenWish>) => setWish({ ...wish, ...change });
  return (
    <div className={styles.editor}>
      <div className={styles.row}>
        <ChoiceField
          label="For"
          options={KIND_CHOICES}
          value={wish.kind}
          onChange={(kind) => set({ kind, cone: isUsual(kind, wish.cone) ? wish.cone : USUAL_CONES[kind] })}
        />
        <ChoiceField label="To reach" options={CONE_CHOICES} value={wish.cone} onChange={(cone) => set({ cone })} />
        <ChoiceField
          label="Pace"
          look="row"
          options={PACE_CHOICES}
          value={wish.pace}
          onChange={(pace) => set({ pace })}
        />
      </div>
      <div className={styles.row}>
        <LengthField
          label="Thickest wall or foot"
          valueMm={wish.thicknessMm ?? 8}
          onChange={(mm) => set({ thicknessMm: mm ?? undefined })}
        />
        <NumberField
          label="Hold at the top, min"
          hint="Left empty: as the pace has it."
          min={0}
          max={600}
          value={wish.holdMin ?? null}
          onChange={(min) => set({ holdMin: min ?? undefined })}
        />
        {isRaw ? (
          <ChoiceField
            label="The ware is"
            options={DRYNESS_CHOICES}
            value={wish.dryness ?? "bone-dry"}
            onChange={(dryness) => set({ dryness })}
          />
        ) : (
          <ChoiceField
            label="Afterwards"
            options={ENDING_CHOICES}
            value={wish.ending ?? "natural"}
            onChange={(ending) => set({ ending })}
          />
        )}
        <Checkbox
          isSelected={wish.guardedCooling ?? (wish.thicknessMm ?? 8) >= 15}
          onChange={(guardedCooling) => set({ guardedCooling })}
          hint="Against dunting of thick or large ware."
        >
          Held back where quartz inverts
        </Checkbox>
      </div>
      <Problem error={written.error} />
      {written.isPending && <Spinner words="It is being written" />}
      {programme && (
        <>
          <p>
            {hoursLong(programmeHours(programme).heating)} up
            {kiln === null
              ? ", in a kiln that follows."
              : "; aimed so that this load as a whole gets the cone in this kiln."}
          </p>
          {written.data?.notes.map((note) => (
            <Sign key={note} kind="mind">
              {note}
            </Sign>
          ))}
          <ProgrammeTable programme={programme} units={units} />
        </>
      )}
    </div>
  );
}

const isUsual = (kind: WrittenWish["kind"], cone: WrittenWish["cone"]): boolean => {
  const { coolest, hottest } = usualCones(kind);
  const place = CONE_CHOICES.findIndex(({ id }) => id === cone);
  const [from, to] = [coolest, hottest].map((each) => CONE_CHOICES.findIndex(({ id }) => id === each));
  return place >= (from ?? 0) && place <= (to ?? 0);
};
