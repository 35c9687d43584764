import styles from "./Spinner.module.css";

/** Something is on its way. `words` say what, to eyes as well where it is not small. */
export function Spinner({ words, isSmall = false }: { readonly words?: string; readonly isSmall?: boolean }) {
  const wheel = <span className={isSmall ? styles.small : styles.wheel} aria-hidden="true" />;
  if (words === undefined) return wheel;
  return (
    <p className={styles.line} role="status">
      {wheel}
      <span>{words}</span>
    </p>
  );
}
