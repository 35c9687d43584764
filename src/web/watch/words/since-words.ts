const MINUTE_MS = 60_000;

/** How long ago: "just now", "12 minutes", "3 h 05 min". */
export function agoWords(ms: number): string {
  const minutes = Math.floor(ms / MINUTE_MS);
  if (minutes < 1) return "less than a minute";
  if (minutes === 1) return "1 minute";
  if (minutes < 60) return `${minutes} minutes`;
  const hours = Math.floor(minutes / 60);
  if (hours >= 48) return `${Math.floor(hours / 24)} days`;
  return `${hours} h ${String(minutes % 60).padStart(2, "0")} min`;
}

/** Readings that come as seldom as one in five minutes are still no silence; from here on it is said, as a fact. */
const SAID_FROM_MS = 2.5 * MINUTE_MS;
/** The watch calls it a fault from here on (src/firing/watching/fault-thresholds.ts). */
const SILENT_FROM_MS = 10 * MINUTE_MS;

/** A rehearsal's readings are sent and shown in parts: so long of this device's clock is no silence yet. */
const REHEARSAL_SLACK_MS = 3000;

/** How old the newest reading is, in words; null where it is fresh. @param pace how fast the studio's clock runs */
export function silenceWords(ageMs: number, pace = 1): { readonly words: string; readonly isLong: boolean } | null {
  const slackMs = pace === 1 ? 0 : REHEARSAL_SLACK_MS * pace;
  if (ageMs < SAID_FROM_MS + slackMs) return null;
  return { words: `No reading for ${agoWords(ageMs)}`, isLong: ageMs >= SILENT_FROM_MS + slackMs };
}
