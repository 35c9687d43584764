import type { Programme } from "../../firing/programme/programme.ts";
import type { FiringWatch } from "../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { timeWords } from "../firings/words/clock-words.ts";
import { Sign, TemperatureText } from "../parts/index.ts";
import { useSettings } from "../studio/hooks.ts";
import styles from "./Now.module.css";
import { paceWords } from "./words/pace-words.ts";
import { placeWords } from "./words/place-words.ts";
import { silenceWords } from "./words/since-words.ts";
import { degreesFigure } from "./words/temperature-words.ts";

interface NowPartProps {
  readonly firing: FiringRecord;
  readonly watch: FiringWatch;
  readonly nowMs: number;
}

/** How hot it is and what is wanted, to be read from across the studio. */
export function NowPart({ firing, watch, nowMs }: NowPartProps) {
  const { temperatureUnits: units } = useSettings();
  const { latest, place } = watch;
  if (latest === null) {
    return (
      <section className={styles.now} aria-label="Now">
        <p className={styles.temperature}>– °{units}</p>
        <p className={styles.place}>No reading yet. Type one in, or add what sends them.</p>
      </section>
    );
  }
  const silence = silenceWords(nowMs - Date.parse(latest.at), watch.pace);
  const pace = place === null ? null : paceWords(place, units);
  const segments = (firing.programme as Programme | null)?.segments ?? [];
  return (
    <section className={styles.now} aria-label="Now">
      <p className={`${styles.temperature} ${silence?.isLong ? styles.old : ""}`}>
        {degreesFigure(latest.tempC, units)}
        <span className={styles.unit}> °{units}</span>
      </p>
      <div className={styles.beside}>
        {place !== null && place.wantedC !== null && place.askedCPerHour !== null && (
          <p className={styles.wanted}>
            Wanted now{" "}
            <b>
              <TemperatureText celsius={place.wantedC} />
            </b>
          </p>
        )}
        {pace !== null && (
          <p className={styles.pace}>
            <Sign kind={pace.kind}>{pace.words}</Sign>
          </p>
        )}
        {place !== null && <p className={styles.place}>{placeWords(place, segments, units)}</p>}
        {silence === null ? (
          <p className={styles.soft}>Read at {timeWords(latest.at)}</p>
        ) : (
          <p role={silence.isLong ? "alert" : undefined} className={styles.silence}>
            <Sign kind={silence.isLong ? "breaks" : "mind"}>{silence.words}</Sign>
          </p>
        )}
      </div>
    </section>
  );
}
