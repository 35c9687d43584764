import { type KeyboardEvent, type ReactNode, useId, useRef } from "react";
import styles from "./Tabs.module.css";

export interface Tab<Id extends string> {
  readonly id: Id;
  readonly label: ReactNode;
  /** What shows while it is chosen; left out where the screen draws that elsewhere. */
  readonly content?: ReactNode | undefined;
}

export interface TabsProps<Id extends string> {
  /** What the tabs choose between, for ears. */
  readonly label: string;
  readonly tabs: readonly Tab<Id>[];
  readonly value: Id;
  readonly onChange: (id: Id) => void;
}

/** One view of several. Arrow keys go from one to the next. */
export function Tabs<Id extends string>({ label, tabs, value, onChange }: TabsProps<Id>) {
  const base = useId();
  const row = useRef<HTMLDivElement>(null);
  const chosen = tabs.find(({ id }) => id === value);
  const go = (event: KeyboardEvent) => {
    const at = tabs.findIndex(({ id }) => id === value);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: tabs.length - 1 }[event.key];
    const next = to === undefined ? undefined : tabs[(to + tabs.length) % tabs.length];
    if (!next) return;
    event.preventDefault();
    onChange(next.id);
    row.current?.querySelector<HTMLElement>(`[data-tab="${next.id}"]`)?.focus();
  };
  return (
    <>
      <div ref={row} role="tablist" aria-label={label} className={styles.tabs} onKeyDown={go}>
        {tabs.map((tab) => (
          <button
            key={tab.id}
            type="button"
            role="tab"
            id={`${base}-${tab.id}`}
            data-tab={tab.id}
            aria-selected={tab.id === value}
            aria-controls={tab.id === value && tab.content !== undefined ? `${base}-panel` : undefined}
            tabIndex={tab.id === value ? 0 : -1}
            className={styles.tab}
            onClick={() => onChange(tab.id)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      {chosen?.content !== undefined && (
        <div role="tabpanel" id={`${base}-panel`} aria-labelledby={`${base}-${chosen.id}`}>
          {chosen.content}
        </div>
      )}
    </>
  );
}
