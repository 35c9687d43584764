import { useSyncExternalStore } from "react";

const narrow = typeof matchMedia === "undefined" ? null : matchMedia("(max-width: 719px)");

/** Whether the screen is a phone's: the same width at which the frame puts its places at the bottom. */
export const useNarrow = (): boolean =>
  useSyncExternalStore(
    (listener) => {
      narrow?.addEventListener("change", listener);
      return () => narrow?.removeEventListener("change", listener);
    },
    () => narrow?.matches ?? false,
  );
