import { hoursWords } from "../chart/chart-words.ts";

/** "41.3 kWh". */
export const kWhWords = (kWh: number): string => `${kWh.toFixed(kWh < 10 ? 2 : 1)} kWh`;

/** A price in her money: "EUR 12.40"; the number alone where no currency is set. */
export const moneyWords = (value: number, currency: string): string =>
  currency === "" ? value.toFixed(2) : `${currency} ${value.toFixed(2)}`;

/** "9 h 20 min": hours as she would say them. */
export const hoursLong = (hours: number): string => hoursWords(hours * 60);
