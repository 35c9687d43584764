import { useId } from "react";
import type { PartAge, UpkeepDue } from "../../../studio/firings/upkeep-due.ts";
import styles from "../Upkeep.module.css";
import { dayWords } from "./age-words.ts";

/** How long the kiln and its parts have served. */
export function AgesPart({ due }: { readonly due: UpkeepDue }) {
  const id = useId();
  const rows: readonly (readonly [string, PartAge])[] = [
    ["The kiln", due.all],
    ["Elements", due.elements],
    ["Probe", due.probe],
    ["Relays", due.relay],
  ];
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>How long they have served</h2>
      <dl className={styles.figures}>
        {rows.map(([name, age]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <strong>{age.firings === 1 ? "1 firing" : `${age.firings} firings`}</strong>
              {age.firings > 0 && (
                <>
                  {Math.round(age.hours)} hours of heating
                  <br />
                </>
              )}
              <span className={styles.soft}>
                {age.changedAt === null
                  ? name === "The kiln"
                    ? "kept here"
                    : "no change kept here"
                  : `new on ${dayWords(age.changedAt)}`}
              </span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
