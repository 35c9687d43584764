import { useId } from "react";
import { formatTemperature } from "../../measures/temperature.ts";
import type { FiringWatch, WatchedMoment } from "../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import { clockWords } from "../firings/words/clock-words.ts";
import { kWhWords } from "../firings/words/figures.ts";
import { useSettings } from "../studio/hooks.ts";
import styles from "./Watch.module.css";
import { momentWords } from "./words/moment-words.ts";

interface OutlookPartProps {
  readonly firing: FiringRecord;
  readonly watch: FiringWatch;
  readonly nowMin: number;
}

const ALLOWS: Readonly<Record<number, string>> = {
  200: "Plugs out, lid shut",
  120: "Lid cracked open",
  95: "Lid lifted",
  50: "Unloaded by hand",
};

/** While one of these lasts, the readings do not say how hot the kiln is. */
const DOUBTED = new Set(["dead probe", "slipped probe", "jump"]);

/** When the cone goes down and when it may be opened, with how sure that is; the energy so far. */
export function OutlookPart({ firing, watch, nowMin }: OutlookPartProps) {
  const id = useId();
  const { outlook, startedAt } = watch;
  const { temperatureUnits } = useSettings();
  const when = (moment: WatchedMoment | null): string =>
    moment === null
      ? "not as things stand"
      : moment.toMin < nowMin
        ? `since ${clockWords(startedAt, moment.atMin)}`
        : momentWords(moment, startedAt, nowMin);
  const metered = meteredKWh(firing);
  return (
    <section className={`${styles.part} ${styles.outlook}`} aria-labelledby={id}>
      <h2 id={id}>What comes</h2>
      {outlook === null ? (
        <p>{noOutlook(firing, watch)}</p>
      ) : (
        <dl className={styles.coming}>
          {outlook.cone !== null && (
            <div className={styles.first}>
              <dt>Cone {outlook.cone.cone} down</dt>
              <dd>{coneFell(watch) ?? when(outlook.cone.down)}</dd>
            </div>
          )}
          {firing.shutOffAt === undefined && outlook.shutOff !== null && watch.place?.doing !== "over" && (
            <div className={styles.first}>
              <dt>Programme over</dt>
              <dd>{when(outlook.shutOff)}</dd>
            </div>
          )}
          {outlook.cool.map(({ tempC, means, when: moment }) => (
            <div key={tempC}>
              <dt>
                {ALLOWS[tempC] ?? means}{" "}
                <span className={styles.soft}>under {formatTemperature(tempC, temperatureUnits)}</span>
              </dt>
              <dd>{when(moment)}</dd>
            </div>
          ))}
        </dl>
      )}
      {outlook !== null && outlook.kWh !== null && (
        <p>
          <b>{kWhWords(outlook.kWh.soFar)}</b> so far by the model, {kWhWords(outlook.kWh.inAll)} in all
          {metered !== null && <>; the meter says {kWhWords(metered)}</>}
        </p>
      )}
      <p className={styles.soft}>Reckoned anew from every reading. Your kiln’s manual has the last word on opening.</p>
    </section>
  );
}

/** When the cone wanted went down, from the cones themselves; null while it stands. */
function coneFell({ outlook, heat, startedAt }: FiringWatch): string | null {
  const wanted = outlook?.cone?.cone;
  const probe = heat.find(({ level }) => level === null);
  const fell = probe?.cones.find(({ cone }) => cone === wanted)?.downAtMin ?? null;
  return fell === null ? null : `at ${clockWords(startedAt, fell)}`;
}

function noOutlook(firing: FiringRecord, { latest, faults }: FiringWatch): string {
  if (latest === null) return "What comes is reckoned once readings come in.";
  if (firing.programme === null) return "This firing has no programme, so that what comes cannot be reckoned.";
  const isDoubted = faults.some(({ kind, untilMin }) => untilMin === null && DOUBTED.has(kind));
  return isDoubted
    ? "Nothing is foretold while the probe cannot be believed."
    : "What comes is reckoned as soon as there are readings enough.";
}

function meteredKWh({ meterReadings }: FiringRecord): number | null {
  const [first, last] = [meterReadings[0], meterReadings.at(-1)];
  return first === undefined || last === undefined || first === last ? null : last.kWh - first.kWh;
}
