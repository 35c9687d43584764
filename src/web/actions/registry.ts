import { useEffect, useRef, useSyncExternalStore } from "react";
import { isPressed, readKeys } from "./keys.ts";

// Everything she can do on the screen at hand, in one list: the palette, the keyboard help, menus and keys read it.

/** One thing she can do. */
export interface Action {
  /** Its name for machines, once on a screen: "load.turn". */
  readonly id: string;
  /** In words, as she would say it: "Turn the piece". */
  readonly name: string;
  /** "mod+z", "?", "delete", "left". Without: found in the palette alone. */
  readonly keys?: string | undefined;
  /** What it stands under: "Load", "Go to". */
  readonly group: string;
  readonly run: () => void;
  /** Left out: always. */
  readonly isEnabled?: boolean | (() => boolean) | undefined;
}

const actions = new Map<string, Action>();
const listeners = new Set<() => void>();
let list: readonly Action[] = [];

function changed(): void {
  list = [...actions.values()];
  for (const listener of listeners) listener();
}

/** Puts an action in the list; the answer takes it out. The last one put in under an id is the one that counts. */
export function addAction(action: Action): () => void {
  actions.set(action.id, action);
  changed();
  return () => {
    if (actions.get(action.id) !== action) return;
    actions.delete(action.id);
    changed();
  };
}

export const isEnabled = ({ isEnabled: enabled }: Action): boolean =>
  typeof enabled === "function" ? enabled() : (enabled ?? true);

/** Makes an action part of the screen while it is mounted. */
export function useAction(action: Action): void {
  const latest = useRef(action);
  latest.current = action;
  const { id, name, keys, group } = action;
  useEffect(
    () =>
      addAction({
        id,
        name,
        keys,
        group,
        run: () => latest.current.run(),
        isEnabled: () => isEnabled(latest.current),
      }),
    [id, name, keys, group],
  );
}

/** Everything she can do now, in the order it was put in. */
export const useActions = (): readonly Action[] =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => list,
  );

export const onMac: boolean = typeof navigator !== "undefined" && /Mac|iPhone|iPad/.test(navigator.userAgent);

/** Typing goes to the field; so do keys a dialog or an open menu wants for itself. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || (target.matches("input, select, textarea") && !target.matches(ONLY_PRESSED)));

const ONLY_PRESSED = "input[type=checkbox], input[type=radio], input[type=button], input[type=range]";

/**
 * Runs the action whose keys are pressed. In a field only keys held with Control or Command count, save those the field
 * itself needs to undo typing.
 */
export function listenForKeys(): () => void {
  const pressed = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.isComposing) return;
    const typing = isTyping(event.target);
    const dialogOpen = document.querySelector("dialog[open]") !== null;
    const found = list.findLast((action) => {
      if (action.keys === undefined) return false;
      const chord = readKeys(action.keys);
      if (typing && (!chord.mod || chord.key === "z" || chord.key === "y")) return false;
      return isPressed(chord, event, onMac) && isEnabled(action);
    });
    if (!found || (dialogOpen && found.group !== ANYWHERE)) return;
    event.preventDefault();
    found.run();
  };
  addEventListener("keydown", pressed);
  return () => removeEventListener("keydown", pressed);
}

/** The group whose actions work even while a dialog is open. */
export const ANYWHERE = "Anywhere";
