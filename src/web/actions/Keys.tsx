import styles from "./Keys.module.css";
import { keyCaps } from "./keys.ts";
import { onMac } from "./registry.ts";

/** The keys of an action, as caps. */
export const Keys = ({ keys }: { readonly keys: string }) => (
  <span className={styles.keys}>
    {keyCaps(keys, onMac).map((cap) => (
      <kbd key={cap}>{cap}</kbd>
    ))}
  </span>
);
