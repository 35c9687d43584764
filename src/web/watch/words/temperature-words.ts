import type { TemperatureUnits } from "../../../measures/temperature.ts";

/** A difference of temperatures: "12 °C", never below zero. */
export function degreesWords(celsius: number, units: TemperatureUnits): string {
  return `${Math.round(Math.abs(units === "F" ? (celsius * 9) / 5 : celsius))} °${units}`;
}

/** The figure alone, as it stands large on the screen. */
export const degreesFigure = (celsius: number, units: TemperatureUnits): string =>
  String(Math.round(units === "F" ? (celsius * 9) / 5 + 32 : celsius));
