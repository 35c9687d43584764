import { type ReactNode, useEffect, useRef } from "react";
import { arrived } from "../parts/arriving.ts";
import { BackIcon, IconButton } from "../parts/index.ts";
import styles from "./KilnWalk.module.css";
import type { Progress } from "./ticks.ts";

interface WalkHeadProps {
  readonly title: string;
  readonly back: { readonly href: string; readonly label: string };
  readonly progress: Progress;
  readonly action: ReactNode;
}

/** What stands over every step: which load, how far. Lower than a page's head, to leave room for the drawing. */
export function WalkHead({ title, back, progress, action }: WalkHeadProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const { piecesIn, pieces } = progress;
  useEffect(() => {
    document.title = `${title} · at the kiln`;
    if (arrived() && document.activeElement?.closest("main") === null) heading.current?.focus({ preventScroll: true });
  }, [title]);
  return (
    <header className={styles.head}>
      <IconButton label={back.label} icon={<BackIcon />} href={back.href} />
      <div className={styles.titles}>
        <h1 ref={heading} tabIndex={-1} className={styles.title}>
          {title}
        </h1>
        <div className={styles.progress}>
          <strong>
            {piecesIn} of {pieces} in
          </strong>
          <span className={styles.bar}>
            <span style={{ width: `${(100 * piecesIn) / Math.max(1, pieces)}%` }} />
          </span>
        </div>
      </div>
      {action}
    </header>
  );
}
