import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import { Dialog } from "../parts/Dialog.tsx";
import { findActions } from "./find-actions.ts";
import { Keys } from "./Keys.tsx";
import { openList } from "./open-list.ts";
import styles from "./Palette.module.css";
import { type Action, ANYWHERE, isEnabled, useActions } from "./registry.ts";

const close = () => openList.set(null);

/** What belongs to the screen at hand first, then where else to go. */
function inPaletteOrder(actions: readonly Action[]): Action[] {
  const rank = ({ group }: Action) => (group === ANYWHERE ? 2 : group === "Go to" ? 1 : 0);
  return actions.filter((action) => action.id !== "palette" && isEnabled(action)).sort((a, b) => rank(a) - rank(b));
}

/** Everything she can do on the screen at hand, found by typing. */
export default function Palette() {
  const actions = useActions();
  const [typed, setTyped] = useState("");
  const [place, setPlace] = useState(0);
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const found = useMemo(() => findActions(inPaletteOrder(actions), typed), [actions, typed]);
  const at = Math.min(place, found.length - 1);
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: "nearest" });
  }, [at]);
  const run = (action: Action | undefined) => {
    if (!action) return;
    close();
    // The dialog gives the focus back first; what runs may want it elsewhere.
    setTimeout(action.run);
  };
  const go = (event: KeyboardEvent) => {
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, PageDown: at + 6, PageUp: at - 6 }[event.key];
    if (event.key === "Enter") {
      event.preventDefault();
      run(found[at]);
    } else if (to !== undefined && found.length > 0) {
      event.preventDefault();
      const step = Math.abs(to - at) === 1 ? (to + found.length) % found.length : to;
      setPlace(Math.max(0, Math.min(found.length - 1, step)));
    }
  };
  return (
    <Dialog title="What would you like to do?" isOpen onClose={close}>
      <input
        className={styles.search}
        role="combobox"
        aria-label="What would you like to do?"
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-activedescendant={found.length > 0 ? `${id}-${at}` : undefined}
        aria-autocomplete="list"
        autoComplete="off"
        spellCheck={false}
        placeholder="Type a few letters"
        data-first
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setPlace(0);
        }}
        onKeyDown={go}
      />
      <div ref={list} className={styles.list} id={`${id}-list`} role="listbox" aria-label="What can be done here">
        {found.map((action, i) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the focus and takes the keys.
          // biome-ignore lint/a11y/useFocusableInteractive: pointed at by the field's aria-activedescendant.
          <div
            key={action.id}
            id={`${id}-${i}`}
            role="option"
            aria-selected={i === at}
            className={styles.option}
            onClick={() => run(action)}
            onPointerMove={() => setPlace(i)}
          >
            <span className={styles.name}>{action.name}</span>
            <span className={styles.group}>{action.group}</span>
            {action.keys !== undefined && <Keys keys={action.keys} />}
          </div>
        ))}
      </div>
      {found.length === 0 && <p role="status">Nothing here goes by “{typed}”.</p>}
    </Dialog>
  );
}
