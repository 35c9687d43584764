import { useState } from "react";
import { Dialog } from "../parts/Dialog.tsx";
import { TextField } from "../parts/TextField.tsx";
import { findActions } from "./find-actions.ts";
import styles from "./KeyboardHelp.module.css";
import { Keys } from "./Keys.tsx";
import { openList } from "./open-list.ts";
import { type Action, useActions } from "./registry.ts";

type KeyedAction = Action & { readonly keys: string };

/** Every key of the screen at hand, by what it belongs to. */
export default function KeyboardHelp() {
  const [typed, setTyped] = useState("");
  const keyed = useActions().filter((action): action is KeyedAction => action.keys !== undefined);
  const found = findActions(keyed, typed);
  const groups = [...new Set(found.map(({ group }) => group))];
  return (
    <Dialog title="Keys on this screen" isOpen isWide onClose={() => openList.set(null)}>
      <TextField label="Find a key" isSearch value={typed} onChange={setTyped} autoFocus />
      <div className={styles.groups}>
        {groups.map((group) => (
          <section key={group}>
            <h3>{group}</h3>
            <dl className={styles.list}>
              {found
                .filter((action) => action.group === group)
                .map(({ id, name, keys }) => (
                  <div key={id} className={styles.line}>
                    <dt>{name}</dt>
                    <dd>
                      <Keys keys={keys} />
                    </dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
      </div>
      {found.length === 0 && <p role="status">No key goes by “{typed}”.</p>}
      <p className={styles.foot}>Tab goes from one thing to the next, Enter or Space presses it, Escape closes.</p>
    </Dialog>
  );
}
