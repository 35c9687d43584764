const DAY_MS = 24 * 60 * 60 * 1000;

/** Where a moment lies on the calendar of this device: "2026-11-25". */
export function dayOf(moment: Date): string {
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${String(moment.getFullYear()).padStart(4, "0")}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** Whole days from one calendar day to another; below zero where the other is earlier. Days, not hours: no clock change counts. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

/** The calendar day so many days after another. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
