import type { TemperatureUnits } from "../../../measures/temperature.ts";
import type { Learned } from "../../../studio/records/calibration-record.ts";
import { Sign } from "../../parts/index.ts";
import parts from "../Learn.module.css";
import { degreeDifference } from "./parameter-words.ts";

/** A fit much over 1 means that something happened which the model does not know of. */
const POOR_FIT = 2;

/** How sure a foretelling of the usual programme was before, and is now. */
export function HowSure({ learned, units }: { readonly learned: Learned; readonly units: TemperatureUnits }) {
  const { before, after, fit, settled, notes } = learned;
  const percent = (value: number): string => `± ${Math.max(1, Math.round(value))} %`;
  const degrees = (value: number): string => `± ${degreeDifference(Math.max(1, value), units)}`;
  const rows = [
    ["Energy", percent(before.unsure.kWhPercent), percent(after.unsure.kWhPercent)],
    ["Heat of the shelves", degrees(before.unsure.shelfC), degrees(after.unsure.shelfC)],
    ["Cooling time", percent(before.unsure.coolPercent), percent(after.unsure.coolPercent)],
  ] as const;
  return (
    <>
      <table className={parts.table}>
        <caption>How sure the next foretelling is</caption>
        <thead>
          <tr>
            <th scope="col">Of its</th>
            <th scope="col">Before</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([what, was, now]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{was}</td>
              <td>{now}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {(fit > POOR_FIT || !settled) && (
        <Sign kind="mind">
          {settled
            ? "What was read and what the model expects do not go together well: look at the readings and cones again."
            : "The search for the best fit was broken off: take these values with care."}
        </Sign>
      )}
      {notes.length > 0 && (
        <details className={parts.more}>
          <summary>More of what came out</summary>
          <ul>
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
