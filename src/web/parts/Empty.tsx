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

/** A bare board on two blocks, and the rings where pots stood. */
const EmptyBoard = () => (
  <svg
    width="168"
    height="72"
    viewBox="0 0 168 72"
    fill="none"
    stroke="currentColor"
    strokeWidth="2"
    strokeLinecap="round"
    aria-hidden="true"
  >
    <path d="M8 48h152v6H8z" />
    <path d="M26 54v12h20V54M122 54v12h20V54" />
    <g strokeDasharray="2 6">
      <ellipse cx="40" cy="44" rx="17" ry="4" />
      <ellipse cx="84" cy="44" rx="17" ry="4" />
      <path d="M112 44c-7-9-7-22 1-30h22c8 8 8 21 1 30z" />
    </g>
  </svg>
);
