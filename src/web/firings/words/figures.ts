/** "41.3 kWh". */
export const kWhWords = (kWh: number): string => `${kWh.toFixed(kWh < 10 ? 2 : 1)} kWh`;

/** A price in her money: "EUR 12.40"; the number alone where no currency is set. */
export const moneyWords = (value: number, currency: string): string =>
  currency === "" ? value.toFixed(2) : `${currency} ${value.toFixed(2)}`;

/** "9 h 20 min". */
export function hoursLong(hours: number): string {
  const minutes = Math.round(hours * 60);
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
}
