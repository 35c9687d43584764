import { useId } from "react";
import type { Tally } from "../../../studio/firings/kiln-maps.ts";
import parts from "../Learn.module.css";
import { commonestFault } from "./map-words.ts";

interface TallyTableProps {
  readonly title: string;
  /** "Glaze", "Form". */
  readonly of: string;
  readonly rows: readonly ({ readonly name: string } & Tally)[];
}

/** What became of pieces, row by row: fired, good, seconds, lost, the commonest fault. */
export function TallyTable({ title, of, rows }: TallyTableProps) {
  const id = useId();
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys. */}
      <section className={parts.scroll} tabIndex={0} aria-label={`${title}, as a table`}>
        <table className={parts.table}>
          <thead>
            <tr>
              <th scope="col">{of}</th>
              <th scope="col" className={parts.figure}>
                Fired
              </th>
              <th scope="col" className={parts.figure}>
                Good
              </th>
              <th scope="col" className={parts.figure}>
                Seconds
              </th>
              <th scope="col" className={parts.figure}>
                Lost
              </th>
              <th scope="col">Commonest fault</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td className={parts.figure}>{row.pieces}</td>
                <td className={parts.figure}>{row.good}</td>
                <td className={parts.figure}>{row.second}</td>
                <td className={parts.figure}>{row.lost}</td>
                <td>{commonestFault(row)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
