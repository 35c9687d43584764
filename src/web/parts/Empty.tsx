import type { ReactNode } from "react";
import styles from "./Empty.module.css";

export interface EmptyProps {
  readonly title: string;
  /** What would be here, and how to begin. */
  readonly words: ReactNode;
  readonly action?: ReactNode | undefined;
  /** A drawing of its own; left out, an empty ware board. */
  readonly drawing?: ReactNode | undefined;
}

/** Where nothing is yet: says what would be, and how to begin. */
export function Empty({ title, words, action, drawing }: EmptyProps) {
  return (
    <section className={styles.empty}>
      {drawing ?? <EmptyBoard />}
      <h2>{title}</h2>
      <p>{words}</p>
      {action && <div className={styles.action}>{action}</div>}
    </section>
  );
}

/** A bare board on two blocks, and where pots might stand. */
const EmptyBoard = () => (
  <svg
    width="184"
    height="92"
    viewBox="0 0 184 92"
    fill="none"
    stroke="currentColor"
    strokeWidth="2"
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
  >
    <path d="M6 68h172v6H6zM28 74v12h22V74M134 74v12h22V74" />
    <path
      strokeDasharray="1 5"
      d="M28 67c-9-10-9-28 2-40v-6h16v6c11 12 11 30 2 40zM80 67c-7-7-12-17-13-28h46c-1 11-6 21-13 28zM130 67V36h26v31zM156 42h4c5 0 8 3 8 8s-3 8-8 8h-4"
    />
  </svg>
);
