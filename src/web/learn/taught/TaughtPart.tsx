import { useId, useMemo, useState } from "react";
import { PARAMETERS } from "../../../firing/calibration/parameters.ts";
import { calibrationChanges } from "../../../studio/firings/calibration-change.ts";
import { earlierCalibration } from "../../../studio/firings/earlier-calibration.ts";
import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { ChoiceField, Sign } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import parts from "../Learn.module.css";
import { HowSure } from "./HowSure.tsx";
import { parameterName, parameterWords, sureWords } from "./parameter-words.ts";
import { SureBar } from "./SureBar.tsx";
import styles from "./Taught.module.css";

interface TaughtPartProps {
  /** Of one kiln, the newest first; at least one. */
  readonly calibrations: readonly CalibrationRecord[];
  readonly firings: readonly FiringRecord[];
}

/** Past so many of the standard deviations believed before, a change came as a surprise. */
const SURPRISE = 2;

/** What one calibration changed, and how sure it is. */
export function TaughtPart({ calibrations, firings }: TaughtPartProps) {
  const id = useId();
  const { temperatureUnits: units } = useSettings();
  const [chosenId, setChosenId] = useState<string | null>(null);
  const shown = calibrations.find((each) => each.id === chosenId) ?? (calibrations[0] as CalibrationRecord);
  const earlier = useMemo(
    () => earlierCalibration(calibrations, shown.kilnId, shown.firingIds),
    [calibrations, shown.kilnId, shown.firingIds],
  );
  const changes = useMemo(() => calibrationChanges(earlier, shown), [earlier, shown]);
  const sigmaBefore = (name: (typeof changes)[number]["name"]): number =>
    earlier?.calibration[name].sigma ?? PARAMETERS.find((each) => each.name === name)?.priorSigma ?? 0;
  const names = new Map(firings.map((firing) => [firing.id, firing.name]));
  const fromWords = (record: CalibrationRecord): string => {
    const of = record.firingIds.map((firingId) => names.get(firingId) ?? "a firing that is gone");
    return of.length === 1 ? (of[0] as string) : `${of.length} firings`;
  };
  const surprises = changes.filter(({ surprise }) => surprise > SURPRISE);
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>What it learned of the kiln</h2>
      {calibrations.length > 1 ? (
        <ChoiceField
          label="After"
          options={calibrations.map((each) => ({
            id: each.id,
            label: `${fromWords(each)}, ${dayClockWords(each.at)}`,
          }))}
          value={shown.id}
          onChange={setChosenId}
        />
      ) : (
        <p>
          After {fromWords(shown)}, {dayClockWords(shown.at)}
        </p>
      )}
      <p className={parts.soft}>
        The dot is what is believed now, its bar how sure: two times in three it lies within. The pale band is what was
        believed before; the line in the middle is the kiln as you described it.
      </p>
      <ul className={styles.list}>
        {changes.map((change) => (
          <li key={change.name} className={styles.item}>
            <p>
              {parameterWords(change.name, change.after, change.sigma, units)}
              <span className={styles.sure}>, {sureWords(change.name, change.sigma, units)}</span>
              {change.surprise > SURPRISE && <Sign kind="mind">moved further than was to be expected</Sign>}
            </p>
            <SureBar change={change} beforeSigma={sigmaBefore(change.name)} />
          </li>
        ))}
      </ul>
      {surprises.length > 0 && (
        <p>
          Something may have changed since it was last learned from:{" "}
          {surprises.map(({ name }) => parameterName(name).toLowerCase()).join(", ")}. New or broken elements, another
          supply, a probe that slipped, a lid that no longer shuts.
        </p>
      )}
      {shown.learned && <HowSure learned={shown.learned} units={units} />}
    </section>
  );
}
