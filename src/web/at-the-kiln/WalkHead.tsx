import { type ReactNode, useEffect, useRef } from "react";
import { arrived } from "../parts/arriving.ts";
import { AwayIcon, BackIcon, IconButton } from "../parts/index.ts";
import { useConnection } from "../studio/hooks.ts";
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

/** Says that ticks are kept here while the studio is away. */
export function KeptHere() {
  const isAway = useConnection() === "away";
  return (
    <div role="status">
      {isAway && (
        <p className={styles.kept}>
          <AwayIcon size={20} /> No word from the studio. Ticks are kept here and go when it answers.
        </p>
      )}
    </div>
  );
}
