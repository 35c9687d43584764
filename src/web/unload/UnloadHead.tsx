import { useEffect, useRef } from "react";
import { arrived } from "../parts/arriving.ts";
import { BackIcon, IconButton, UndoButtons } from "../parts/index.ts";
import styles from "./Unloading.module.css";
import type { Unloading } from "./use-unloading.ts";

interface UnloadHeadProps {
  readonly unloading: Unloading;
  readonly back: { readonly href: string; readonly label: string };
}

/** What stands over it all: which load, how far, undo. */
export function UnloadHead({ unloading, back }: UnloadHeadProps) {
  const { record, firing, progress } = unloading;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${record.name} · unload`;
    if (arrived() && document.activeElement?.closest("main") === null) heading.current?.focus({ preventScroll: true });
  }, [record.name]);
  return (
    <header className={styles.head}>
      <IconButton label={back.label} icon={<BackIcon />} href={back.href} />
      <div className={styles.titles}>
        <h1 ref={heading} tabIndex={-1} className={styles.title}>
          Unload {record.name}
        </h1>
        <div className={styles.progress}>
          <strong>
            {progress.judged} of {progress.pieces} judged
          </strong>
          <span className={styles.bar}>
            {(["good", "second", "lost"] as const).map((grade) => (
              <span
                key={grade}
                className={styles[grade]}
                style={{ width: `${(100 * progress[grade]) / Math.max(1, progress.pieces)}%` }}
              />
            ))}
          </span>
        </div>
      </div>
      <UndoButtons scope={`firing:${firing.id}`} />
    </header>
  );
}
