/** A number as it is put together on the large keys; at most so many digits. */
export const MOST_DIGITS = 4;

/** The number after a key: a digit, or one back. Leading noughts go. */
export function afterKey(typed: string, key: string): string {
  if (key === "back") return typed.slice(0, -1);
  if (!/^\d$/.test(key)) return typed;
  const longer = `${typed}${key}`.replace(/^0+(?=\d)/, "");
  return longer.length > MOST_DIGITS ? typed : longer;
}

/** What the thermometer of a kiln may say, in her degrees; null where it may not. */
export function typedTemperature(typed: string, units: "C" | "F"): number | null {
  if (typed === "") return null;
  const value = Number(typed);
  return value <= (units === "F" ? 2600 : 1430) ? value : null;
}
