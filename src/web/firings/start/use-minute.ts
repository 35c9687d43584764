import { useSyncExternalStore } from "react";

const MINUTE_MS = 60_000;

/** The minute it is now, in UTC, to the whole minute: anew every minute, and when she looks at the page again. */
export const useMinute = (): string => useSyncExternalStore(onMinute, thisMinute);

const thisMinute = (): string => new Date(Math.floor(Date.now() / MINUTE_MS) * MINUTE_MS).toISOString();

function onMinute(changed: () => void): () => void {
  const timer = setInterval(changed, MINUTE_MS / 4);
  document.addEventListener("visibilitychange", changed);
  return () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", changed);
  };
}
