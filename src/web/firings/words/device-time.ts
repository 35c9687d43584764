const two = (value: number): string => String(value).padStart(2, "0");

/** A moment as the device's own field for date and time takes it: "2026-11-25T18:40". */
export function localField(moment: string | null): string {
  if (moment === null) return "";
  const time = new Date(moment);
  if (Number.isNaN(time.getTime())) return "";
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return `${day}T${two(time.getHours())}:${two(time.getMinutes())}`;
}

/** The moment such a field means by this device's clock, in UTC; null where it holds none. */
export function momentOfField(text: string): string | null {
  if (text === "") return null;
  const time = new Date(text);
  return Number.isNaN(time.getTime()) ? null : time.toISOString();
}

/** The month a moment lies in on this device's calendar: "2026-11". */
export function localMonth(moment: string): string {
  const time = new Date(moment);
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}`;
}

/** "November 2026". */
export const monthWords = (month: string): string =>
  new Date(`${month}-15T12:00:00`).toLocaleDateString(undefined, { month: "long", year: "numeric" });
