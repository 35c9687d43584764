import { keyInTable } from "../../../firing/programme/key-in.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import type { TemperatureUnits } from "../../../measures/temperature.ts";
import { hoursWords } from "../chart/chart-words.ts";
import styles from "./Programmes.module.css";

/** A programme as it is keyed in: whole numbers in her degrees, each line with its reason. */
export function ProgrammeTable({
  programme,
  units,
}: {
  readonly programme: Programme;
  readonly units: TemperatureUnits;
}) {
  const lines = keyInTable(programme, units);
  return (
    <table className={styles.keyIn}>
      <caption className="heard">What to key in, line by line</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="heard">Segment</span>
          </th>
          <th scope="col">Rate</th>
          <th scope="col">To</th>
          <th scope="col">Hold</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ segment, rate, target, holdMin, stage, reason }) => (
          <tr key={segment}>
            <th scope="row">{segment}</th>
            <td>{rate === null ? "as fast as it goes" : `${rate}\u00a0°${units}/h`}</td>
            <td>
              {target}&nbsp;°{units}
            </td>
            <td>{holdMin > 0 ? hoursWords(holdMin) : "none"}</td>
            {(stage || reason) && (
              <td className={styles.why}>
                {stage && <b>{stage}</b>}
                {stage && reason && ": "}
                {reason}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
