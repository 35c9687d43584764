import { type ReactNode, useEffect } from "react";
import { useSettings } from "../studio/hooks.ts";
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
}

/** A screen: its title, its buttons, what is on it. */
export function Page({ title, actions, children, undoScope, back, below, isFull = false }: PageProps) {
  const { studioName } = useSettings();
  useEffect(() => {
    document.title = `${title} · ${studioName || "Wareboard"}`;
  }, [title, studioName]);
  return (
    <div className={isFull ? `${styles.page} ${styles.full}` : styles.page}>
      <header className={styles.head}>
        <div className={styles.title}>
          {back && <IconButton label={back.label} icon={<BackIcon />} href={back.href} />}
          <h1 tabIndex={-1}>{title}</h1>
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
