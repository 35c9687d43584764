import { type ReactNode, useEffect, useRef } from "react";
import { useSettings } from "../studio/hooks.ts";
import { arrived } from "./arriving.ts";
import { IconButton } from "./Button.tsx";
import { BackIcon } from "./icons.tsx";
import styles from "./Page.module.css";
import { UndoButtons } from "./UndoButtons.tsx";

export interface PageProps {
  readonly title: string;
  /** Its main buttons. */
  readonly actions?: ReactNode | undefined;
  readonly children: ReactNode;
  /** Undo and redo for what is done on this screen: "ware", "kilns", "materials", "settings", "loads" or "load:ID". */
  readonly undoScope?: string | undefined;
  /** The screen this one belongs to. */
  readonly back?: { readonly href: string | undefined; readonly label: string };
  /** A line under the title. */
  readonly below?: ReactNode | undefined;
  /** Uses all the room there is, as an editor does. */
  readonly isFull?: boolean | undefined;
  /** Stands in the middle of the window with little on it, as a first page does. */
  readonly isNarrow?: boolean | undefined;
}

/** A screen: its title, its buttons, what is on it. */
export function Page({
  title,
  actions,
  children,
  undoScope,
  back,
  below,
  isFull = false,
  isNarrow = false,
}: PageProps) {
  const { studioName } = useSettings();
  useEffect(() => {
    document.title = `${title} · ${studioName || "Wareboard"}`;
  }, [title, studioName]);
  const heading = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another title may be another screen in the same frame.
  useEffect(() => {
    if (!arrived()) return;
    scrollTo(0, 0);
    if (document.activeElement?.closest("main") === null) heading.current?.focus({ preventScroll: true });
  }, [title]);
  return (
    <div className={`${styles.page} ${isFull ? styles.full : ""} ${isNarrow ? styles.narrow : ""}`}>
      <header className={styles.head}>
        <div className={styles.title}>
          {back && <IconButton label={back.label} icon={<BackIcon />} href={back.href} />}
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
        </div>
        <div className={styles.actions}>
          {undoScope !== undefined && <UndoButtons scope={undoScope} />}
          {actions}
        </div>
        {below && <div className={styles.below}>{below}</div>}
      </header>
      {children}
    </div>
  );
}
