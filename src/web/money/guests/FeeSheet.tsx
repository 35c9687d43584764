import type { GuestFees } from "../../../studio/firings/guest-fees.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { GuestFee } from "../../../studio/records/studio-settings.ts";
import { dayClockWords } from "../../firings/words/clock-words.ts";
import { moneyWords } from "../../firings/words/figures.ts";
import { Button, PrintIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import styles from "../Money.module.css";
import { inMoney } from "../money-csv.ts";

interface FeeSheetProps {
  readonly sheet: GuestFees;
  readonly firing: FiringRecord;
  readonly fee: GuestFee;
  readonly currency: string;
  /** Another guest's sheet is being printed. */
  readonly isLeftOut: boolean;
  readonly onPrint: () => void;
}

/** What one guest owes for one firing. */
export function FeeSheet({ sheet, firing, fee, currency, isLeftOut, onPrint }: FeeSheetProps) {
  const { studioName } = useSettings();
  const { guest, lines, litres, firingCents, cents } = sheet;
  return (
    <article className={styles.sheet} data-print={isLeftOut ? "no" : undefined}>
      <p className={styles.onPaper}>{studioName}</p>
      <div className={styles.head}>
        <h3>{guest}</h3>
        <Button icon={<PrintIcon />} label={`Print the fee sheet of ${guest}`} onPress={onPrint}>
          Print
        </Button>
      </div>
      <p className={styles.onPaper}>
        {firing.name}
        {firing.startedAt && `, ${dayClockWords(firing.startedAt)}`}
      </p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Ware</th>
            <th scope="col" className={styles.figure}>
              Pieces
            </th>
            <th scope="col" className={styles.figure}>
              Space
            </th>
            <th scope="col" className={styles.figure}>
              Fee
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.ware}>
              <th scope="row">{line.ware}</th>
              <td className={styles.figure}>{line.count}</td>
              <td className={styles.figure}>{line.litres.toFixed(2)} l</td>
              <td className={styles.figure}>{inMoney(line.cents)}</td>
            </tr>
          ))}
          {firingCents > 0 && (
            <tr>
              <th scope="row" colSpan={3}>
                For the firing
              </th>
              <td className={styles.figure}>{inMoney(firingCents)}</td>
            </tr>
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={2}>
              In all
            </th>
            <td className={styles.figure}>{litres.toFixed(2)} l</td>
            <td className={styles.figure}>{moneyWords(cents / 100, currency)}</td>
          </tr>
        </tfoot>
      </table>
      <p className={styles.soft}>
        {moneyWords(fee.perLitre, currency)} a litre of the kiln’s space, the air about each piece included.
      </p>
    </article>
  );
}
