import type { ReactNode } from "react";
import { MindIcon } from "./icons.tsx";
import styles from "./Problem.module.css";
import { wordsOf } from "./words-of.ts";

/** What went wrong, in words; nothing where nothing did. */
export function Problem({ error, action }: { readonly error: unknown; readonly action?: ReactNode }) {
  if (error === null || error === undefined) return null;
  return (
    <div className={styles.problem} role="alert">
      <MindIcon />
      <p>{wordsOf(error)}</p>
      {action}
    </div>
  );
}
