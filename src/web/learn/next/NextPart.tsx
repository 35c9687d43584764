import { useId } from "react";
import { whatToMeasureNext } from "../../../studio/firings/calibration-change.ts";
import type { CalibrationRecord } from "../../../studio/records/calibration-record.ts";
import parts from "../Learn.module.css";

/** What to measure in the next firing to learn most, best first. */
export function NextPart({ calibration }: { readonly calibration: CalibrationRecord }) {
  const id = useId();
  const next = whatToMeasureNext(calibration);
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>What to measure next</h2>
      {next.length === 0 ? (
        <p>Nothing that is missing would teach much more. Another firing like the last teaches as much as anything.</p>
      ) : (
        <ol className={parts.steps}>
          {next.map(({ kind, how, surerBy }) => (
            <li key={kind}>
              {how} <span className={parts.soft}>Makes the next foretelling about {surerWords(surerBy)} surer.</span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

const surerWords = (share: number): string => `${Math.max(1, Math.round(100 * share))} %`;
