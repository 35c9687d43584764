import { useSyncExternalStore } from "react";
import { dayOf } from "./calendar-day.ts";

const today = (): string => dayOf(new Date());

/** A page left open overnight shows the new day when it is looked at again, or within the minute. */
function onNewDay(changed: () => void): () => void {
  const everyMinute = setInterval(changed, 60_000);
  document.addEventListener("visibilitychange", changed);
  return () => {
    clearInterval(everyMinute);
    document.removeEventListener("visibilitychange", changed);
  };
}

/** Today on her calendar: "2026-11-25". */
export const useToday = (): string => useSyncExternalStore(onNewDay, today);
