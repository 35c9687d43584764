import { useId } from "react";
import type { MonthCost } from "../../../studio/firings/month-costs.ts";
import { saveFile } from "../../firings/save-file.ts";
import { monthWords } from "../../firings/words/device-time.ts";
import { kWhWords, moneyWords } from "../../firings/words/figures.ts";
import { Button, SaveIcon } from "../../parts/index.ts";
import styles from "../Money.module.css";
import { monthsCsv } from "../money-csv.ts";

interface MonthsPartProps {
  /** The oldest first. */
  readonly months: readonly MonthCost[];
  readonly currency: string;
}

/** What each month's firings cost, the latest first. */
export function MonthsPart({ months, currency }: MonthsPartProps) {
  const id = useId();
  const dearest = Math.max(...months.map(({ total }) => total), 0.01);
  const unknown = months.reduce((sum, each) => sum + each.unknown, 0);
  return (
    <section className={styles.part} aria-labelledby={id}>
      <div className={styles.head}>
        <h2 id={id}>By month</h2>
        <Button
          icon={<SaveIcon />}
          onPress={() => saveFile("firing-costs-by-month.csv", "text/csv", monthsCsv(months, currency))}
        >
          As a table file
        </Button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keys. */}
      <section className={styles.scroll} tabIndex={0} aria-label="Costs by month, as a table">
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Month</th>
              <th scope="col" className={styles.figure}>
                Firings
              </th>
              <th scope="col" className={styles.figure}>
                Energy
              </th>
              <th scope="col" className={styles.figure}>
                Wear
              </th>
              <th scope="col" className={styles.figure}>
                In all{currency && `, ${currency}`}
              </th>
            </tr>
          </thead>
          <tbody>
            {months.toReversed().map(({ month, firings, kWh, energy, elements, shelves, total }) => (
              <tr key={month}>
                <th scope="row">
                  {monthWords(month)}
                  <svg className={styles.bar} viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
                    <rect className={styles.energy} width={(100 * energy) / dearest} height="10" />
                    <rect
                      className={styles.wear}
                      x={(100 * energy) / dearest}
                      width={(100 * (elements + shelves)) / dearest}
                      height="10"
                    />
                  </svg>
                </th>
                <td className={styles.figure}>{firings}</td>
                <td className={styles.figure}>
                  {moneyWords(energy, "")}
                  <br />
                  <span className={styles.soft}>{kWhWords(kWh)}</span>
                </td>
                <td className={styles.figure}>{moneyWords(elements + shelves, "")}</td>
                <td className={styles.figure}>{moneyWords(total, "")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className={styles.soft}>
        The bar: <span className={styles.energyKey} aria-hidden="true" /> energy,{" "}
        <span className={styles.wearKey} aria-hidden="true" /> wear.
      </p>
      {unknown > 0 && (
        <p className={styles.soft}>
          {unknown === 1 ? "One firing has" : `${unknown} firings have`} no known cost of energy and{" "}
          {unknown === 1 ? "is" : "are"} missing from the sums: its meter was not read, or nothing says what electricity
          costs.
        </p>
      )}
    </section>
  );
}
