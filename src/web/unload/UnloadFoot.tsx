import { useRef } from "react";
import { BackIcon, DoneIcon, OnIcon } from "../parts/index.ts";
import { useToolsBelow } from "../parts/use-tools-below.ts";
import type { Stop } from "./memory.ts";
import { stopName, stopNextTo } from "./stops.ts";
import styles from "./UnloadFoot.module.css";
import type { Unloading } from "./use-unloading.ts";

interface UnloadFootProps {
  readonly unloading: Unloading;
  /** Pieces of this shelf nobody has judged. */
  readonly open: number;
  readonly stops: readonly Stop[];
  readonly onVisit: (by: 1 | -1) => void;
  readonly onRestOfShelf: () => void;
}

/** Three large buttons under the thumb: the shelf before, what is to be done here, the shelf after. */
export function UnloadFoot({ unloading, open, stops, onVisit, onRestOfShelf }: UnloadFootProps) {
  const { here, record, keep } = unloading;
  const foot = useRef<HTMLElement>(null);
  useToolsBelow(foot);
  const [before, after] = [stopNextTo(stops, here, -1), stopNextTo(stops, here, 1)];
  return (
    <footer ref={foot} className={styles.buttons}>
      <button type="button" className={styles.side} onClick={() => onVisit(-1)} disabled={before === null}>
        <BackIcon size={30} />
        <span>{before === null ? "Back" : stopName(before)}</span>
      </button>
      <MainButton
        here={here}
        open={open}
        after={after}
        isUnpacked={record.state === "unpacked"}
        onVisit={onVisit}
        onRestOfShelf={onRestOfShelf}
        onKeep={keep}
      />
      <button type="button" className={styles.side} onClick={() => onVisit(1)} disabled={after === null}>
        <OnIcon size={30} />
        <span>{after === null ? "Next" : stopName(after)}</span>
      </button>
    </footer>
  );
}

interface MainButtonProps {
  readonly here: Stop;
  readonly open: number;
  readonly after: Stop | null;
  readonly isUnpacked: boolean;
  readonly onVisit: (by: 1 | -1) => void;
  readonly onRestOfShelf: () => void;
  readonly onKeep: () => void;
}

function MainButton({ here, open, after, isUnpacked, onVisit, onRestOfShelf, onKeep }: MainButtonProps) {
  if (here === "summary") {
    return isUnpacked ? (
      <span className={styles.kept}>
        <DoneIcon size={28} /> Unpacked
      </span>
    ) : (
      <button type="button" className={styles.main} onClick={onKeep}>
        <span>Keep it</span>
        <small>the load is unpacked</small>
      </button>
    );
  }
  if (typeof here === "number" && open > 0) {
    return (
      <button type="button" className={styles.main} onClick={onRestOfShelf}>
        <span>Rest is good</span>
        <small>{open} on this shelf</small>
      </button>
    );
  }
  return (
    <button type="button" className={styles.onward} onClick={() => onVisit(1)}>
      <span>{after === "summary" ? "See it all" : `On to ${stopName(after ?? "summary").toLowerCase()}`}</span>
    </button>
  );
}
