import { type ReactNode, useId } from "react";
import styles from "./Section.module.css";

/** One part of the studio's screen. */
export function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.section}>
      <h2 id={id}>{title}</h2>
      <div className={styles.body}>{children}</div>
    </section>
  );
}
