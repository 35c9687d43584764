import { useSyncExternalStore } from "react";

/** One value that screens watch. */
export interface Watched<Value> {
  readonly get: () => Value;
  readonly set: (value: Value) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

/** A value outside React that tells whoever watches when it becomes another. */
export function watched<Value>(first: Value): Watched<Value> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The value now; the screen is drawn again when it changes. */
export const useWatched = <Value>({ subscribe, get }: Watched<Value>): Value => useSyncExternalStore(subscribe, get);
