import { useId, useMemo } from "react";
import { Link } from "wouter";
import { firingCostShares } from "../../../studio/firings/cost-shares.ts";
import { firingMoney } from "../../../studio/firings/firing-money.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import type { LoadRecord } from "../../../studio/records/load-record.ts";
import { saveFile } from "../../firings/save-file.ts";
import { kWhWords, moneyWords } from "../../firings/words/figures.ts";
import { Button, SaveIcon } from "../../parts/index.ts";
import { useSettings } from "../../studio/hooks.ts";
import { fileName } from "../file-name.ts";
import styles from "../Money.module.css";
import { inMoney, sharesCsv } from "../money-csv.ts";

interface SharesPartProps {
  readonly firing: FiringRecord;
  readonly load: LoadRecord | null;
  readonly currency: string;
}

/** What one firing cost, and what each of its pieces is to carry of it. */
export function SharesPart({ firing, load, currency }: SharesPartProps) {
  const id = useId();
  const settings = useSettings();
  const money = useMemo(() => firingMoney(firing, load, settings), [firing, load, settings]);
  const shares = useMemo(
    () => (load?.plan ? firingCostShares(firing, load, settings) : null),
    [firing, load, settings],
  );
  const shelves = money.shelves?.reduce((sum, each) => sum + each, 0) ?? null;
  const kWh =
    money.kWh === null
      ? ""
      : `, ${kWhWords(money.kWh)} ${money.kWhFrom === "meter" ? "by the meter" : "as it was foretold"}`;
  const rows = [
    [`Energy${kWh}`, money.energy],
    ["Wear of the elements", money.elements],
    ["Wear of the shelves", shelves],
  ] as const;
  return (
    <section className={styles.part} aria-labelledby={id}>
      <div className={styles.head}>
        <h2 id={id}>What {firing.name} cost</h2>
        {shares && shares.wares.length > 0 && (
          <Button
            icon={<SaveIcon />}
            onPress={() => saveFile(fileName(firing, "shares"), "text/csv", sharesCsv(shares, currency))}
          >
            As a table file
          </Button>
        )}
      </div>
      <table className={styles.table}>
        <tbody>
          {rows.map(([what, cost]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td className={styles.figure}>{cost === null ? "not known" : moneyWords(cost, "")}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">In all</th>
            <td className={styles.figure}>{money.total === null ? "not known" : moneyWords(money.total, currency)}</td>
          </tr>
        </tfoot>
      </table>
      {money.notes.map((note) => (
        <p key={note} className={styles.soft}>
          {note}
        </p>
      ))}
      <h3>Its fair shares</h3>
      {shares && shares.wares.length > 0 ? (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys. */}
          <section className={styles.scroll} tabIndex={0} aria-label="Shares by kind of piece, as a table">
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
                    Each
                  </th>
                  <th scope="col" className={styles.figure}>
                    Together
                  </th>
                </tr>
              </thead>
              <tbody>
                {shares.wares.map(({ ware, count, litres, cents }) => (
                  <tr key={ware}>
                    <th scope="row">{ware}</th>
                    <td className={styles.figure}>{count}</td>
                    <td className={styles.figure}>{litres.toFixed(1)} l</td>
                    <td className={styles.figure}>{inMoney(cents / count)}</td>
                    <td className={styles.figure}>{inMoney(cents)}</td>
                  </tr>
                ))}
              </tbody>
              <tfoot>
                <tr>
                  <th scope="row" colSpan={4}>
                    In all
                  </th>
                  <td className={styles.figure}>{moneyWords(shares.cents / 100, currency)}</td>
                </tr>
              </tfoot>
            </table>
          </section>
          <p className={styles.soft}>
            By the space a piece takes, the air about it included; a shelf’s wear by the space on that shelf.
          </p>
        </>
      ) : (
        <p>
          {load === null
            ? "No load was written down for this firing, so nobody knows what stood in it."
            : "Its load has no plan, so nobody knows how much space each piece took."}{" "}
          <Link href="/loads">To the loads</Link>
        </p>
      )}
    </section>
  );
}
