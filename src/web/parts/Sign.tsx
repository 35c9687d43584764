import type { ReactNode } from "react";
import { DoneIcon, MindIcon, NoIcon } from "./icons.tsx";
import styles from "./Sign.module.css";

export interface SignProps {
  /** `keeps`: the rules are kept. `mind`: mind this. `breaks`: it does not go. */
  readonly kind: "keeps" | "mind" | "breaks";
  readonly children: ReactNode;
}

const ICONS = { keeps: DoneIcon, mind: MindIcon, breaks: NoIcon };

/** A few words with a sign and a colour, so that none of them has to tell it alone. */
export function Sign({ kind, children }: SignProps) {
  const Icon = ICONS[kind];
  return (
    <span className={`${styles.sign} ${styles[kind]}`}>
      <Icon size={18} />
      <span>{children}</span>
    </span>
  );
}

/** Something to mind, in a block of its own. */
export function CautionNote({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <aside className={styles.caution}>
      <MindIcon />
      <div>
        <strong>{title}</strong>
        <p>{children}</p>
      </div>
    </aside>
  );
}
