import { useId } from "react";
import { checkProgramme, type ProgrammeFinding } from "../../../firing/programme/check-programme.ts";
import { programmeHours } from "../../../firing/programme/ideal-curve.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { Button, EditIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { Findings } from "../programmes/Findings.tsx";
import { ProgrammeTable } from "../programmes/ProgrammeTable.tsx";
import { programmeWords } from "../programmes/programme-words.ts";
import { hoursLong } from "../words/figures.ts";
import styles from "./Preparing.module.css";

interface ProgrammePartProps {
  readonly firing: FiringRecord;
  /** Found in this kiln; left out where no load tells, and while it is reckoned. */
  readonly findings: readonly ProgrammeFinding[] | undefined;
  readonly onChoose: () => void;
  readonly onEdit: () => void;
}

/** What is to be keyed in, and why. */
export function ProgrammePart({ firing, findings, onChoose, onEdit }: ProgrammePartProps) {
  const { temperatureUnits: units } = useSettings();
  const id = useId();
  const { programme } = firing;
  return (
    <section className={styles.part} aria-labelledby={id}>
      <div className={styles.head}>
        <h2 id={id}>The programme</h2>
        <div className={styles.buttons}>
          {programme && (
            <Button look="quiet" icon={<EditIcon />} onPress={onEdit}>
              Change it
            </Button>
          )}
          <Button look={programme ? "plain" : "main"} onPress={onChoose}>
            {programme ? "Another one" : "Choose a programme"}
          </Button>
        </div>
      </div>
      {programme === null ? (
        <p>None yet: no one programme does for what stands in this load. Have one written, or take one of your own.</p>
      ) : (
        <>
          <p>
            {programmeWords(programme)}
            <span className={styles.soft}>
              {" "}
              · {hoursLong(programmeHours(programme).heating)} up, in a kiln that follows
            </span>
          </p>
          <ProgrammeTable programme={programme} units={units} />
          <Findings findings={findings ?? checkProgramme(programme).findings} />
        </>
      )}
    </section>
  );
}
