import type { WareImport, WareImportRow } from "../../../studio/records/ware-csv/preview-ware-import.ts";
import { Sign } from "../../parts/index.ts";
import styles from "./ImportSheet.module.css";
import { importCounts, importSummary, WHAT_WORDS } from "./import-words.ts";

/** Rows shown at once; a longer list shows those that need a look first. */
const MOST_SHOWN = 300;
const LOOK_FIRST: readonly WareImportRow["what"][] = ["refused", "changed", "new", "same"];

/** What an import will do, row by row: what is refused first, for it needs a look. */
export function ImportPreview({ preview }: { readonly preview: WareImport }) {
  const order = (row: WareImportRow): number => LOOK_FIRST.indexOf(row.what);
  const rows = [...preview.rows].sort((a, b) => order(a) - order(b) || a.line - b.line);
  const hidden = rows.length - MOST_SHOWN;
  return (
    <>
      <p>
        <strong>{importSummary(importCounts(preview))}</strong>
      </p>
      {preview.leftAside.length > 0 && (
        <Sign kind="mind">Columns that say nothing of ware are left aside: {preview.leftAside.join(", ")}.</Sign>
      )}
      <div className={styles.scroll}>
        <table className={styles.rows}>
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col">Batch</th>
              <th scope="col">What happens</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, MOST_SHOWN).map((row) => (
              <tr key={row.line}>
                <td>{row.line}</td>
                <td>{row.name || "without a name"}</td>
                <td>
                  <WhatHappens row={row} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {hidden > 0 && <p className={styles.soft}>And {hidden} rows more.</p>}
    </>
  );
}

function WhatHappens({ row }: { readonly row: WareImportRow }) {
  const { what, changes, notes, reason } = row;
  return (
    <>
      {what === "refused" ? <Sign kind="breaks">{WHAT_WORDS[what]}</Sign> : <strong>{WHAT_WORDS[what]}</strong>}
      {reason && <p>{reason}</p>}
      {what === "changed" && (
        <ul className={styles.changes}>
          {changes.map(({ heading, from, to }) => (
            <li key={heading}>
              {heading}: {from || "nothing"} → {to || "nothing"}
            </li>
          ))}
        </ul>
      )}
      {notes.map((note) => (
        <p key={note} className={styles.soft}>
          {note}
        </p>
      ))}
    </>
  );
}
