const MINUTE_MS = 60_000;

/** A moment so many minutes after a start, as this device's clock shows it: "Wed 18:40". */
export function clockWords(startAt: string, minutes = 0): string {
  const time = new Date(Date.parse(startAt) + minutes * MINUTE_MS);
  if (Number.isNaN(time.getTime())) return "";
  return time.toLocaleString(undefined, { weekday: "short", hour: "2-digit", minute: "2-digit" });
}

/** The time of day alone: "18:40". */
export function timeWords(startAt: string, minutes = 0): string {
  const time = new Date(Date.parse(startAt) + minutes * MINUTE_MS);
  if (Number.isNaN(time.getTime())) return "";
  return time.toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });
}

/** "Wed 25 Nov, 18:40". */
export function dayClockWords(moment: string, minutes = 0): string {
  const time = new Date(Date.parse(moment) + minutes * MINUTE_MS);
  if (Number.isNaN(time.getTime())) return "";
  return time.toLocaleString(undefined, {
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
  });
}
