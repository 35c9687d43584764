import { useEffect, useRef } from "react";
import { DoneIcon } from "../parts/index.ts";
import { unjudged } from "./judging/judged.ts";
import type { Stop } from "./memory.ts";
import styles from "./StopStrip.module.css";
import { stopName } from "./stops.ts";
import type { Unloading } from "./use-unloading.ts";

interface StopStripProps {
  readonly unloading: Unloading;
  readonly stops: readonly Stop[];
  readonly onGo: (stop: Stop) => void;
}

/** Where she is in the kiln: the opening, its shelves from the top with how many pieces are left, the end. */
export function StopStrip({ unloading, stops, onGo }: StopStripProps) {
  const { here, pieces, judged } = unloading;
  const row = useRef<HTMLOListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stop may lie outside what shows of the row.
  useEffect(() => {
    row.current?.querySelector("[aria-current]")?.scrollIntoView({ block: "nearest", inline: "center" });
  }, [here, judged]);
  return (
    <nav className={styles.strip} aria-label="Shelves">
      <ol ref={row} className={styles.row}>
        {stops.map((stop) => {
          const left = unjudged(
            pieces.filter(({ level }) => level === stop),
            judged,
          ).length;
          const isShelf = typeof stop === "number";
          return (
            <li key={stop}>
              <button
                type="button"
                className={styles.stop}
                aria-current={stop === here ? "step" : undefined}
                onClick={() => onGo(stop)}
              >
                <span>{stopName(stop)}</span>
                {isShelf && left > 0 && <small>{left} left</small>}
                {isShelf && left === 0 && (
                  <small className={styles.done}>
                    <DoneIcon size={16} /> judged
                  </small>
                )}
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
