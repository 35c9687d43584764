import { useId } from "react";
import type { Reminder } from "../../../studio/firings/upkeep-due.ts";
import { Sign } from "../../parts/index.ts";
import styles from "../Upkeep.module.css";

/** What should be seen to, the most pressing first. */
export function RemindersPart({ reminders }: { readonly reminders: readonly Reminder[] }) {
  const id = useId();
  const inOrder = [...reminders].sort((a, b) => Number(b.when === "now") - Number(a.when === "now"));
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h2 id={id}>To be seen to</h2>
      {inOrder.length === 0 ? (
        <Sign kind="keeps">Nothing is due</Sign>
      ) : (
        <ul className={styles.list}>
          {inOrder.map(({ what, because, source, when }) => (
            <li key={what}>
              <Sign kind={when === "now" ? "breaks" : "mind"}>
                <strong>{what}</strong>
                {when === "now" ? ", now" : ", soon"}
              </Sign>
              <p>{because}</p>
              <p className={styles.soft}>Source: {source}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
