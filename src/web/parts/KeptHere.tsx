import { useConnection } from "../studio/hooks.ts";
import { AwayIcon } from "./icons.tsx";
import styles from "./KeptHere.module.css";

/** Says, while the studio is away, that what she does is kept here. @param what what is kept, in a sentence */
export function KeptHere({ what }: { readonly what: string }) {
  const isAway = useConnection() === "away";
  return (
    <div role="status">
      {isAway && (
        <p className={styles.kept}>
          <AwayIcon size={20} /> No word from the studio. {what}
        </p>
      )}
    </div>
  );
}
