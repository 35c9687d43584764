import { BadInput } from "./bad-input.ts";

export type TemperatureUnits = "C" | "F";

/** Celsius from Fahrenheit. */
export const celsiusFromFahrenheit = (f: number): number => ((f - 32) * 5) / 9;
/** Fahrenheit from Celsius. */
export const fahrenheitFromCelsius = (c: number): number => (c * 9) / 5 + 32;

const TEMPERATURE = /^([-−]?\d+(?:[.,]\d+)?)\s*(?:(°|deg(?:rees?)?\.?)\s*)?(c|f|celsius|centigrade|fahrenheit)?$/i;
const ABSOLUTE_ZERO_C = -273.15;

/**
 * Reads a temperature as a potter types it: `1222 °C`, `2232 F`, `1222`.
 *
 * @param text what was typed
 * @param bareUnit the unit meant by a bare number, or null where a unit must be given
 * @param path the field, named in the error
 * @returns degrees Celsius, above absolute zero
 * @throws BadInput where the text is not a temperature
 */
export function parseTemperatureC(
  text: string,
  bareUnit: TemperatureUnits | null = null,
  path = "temperature",
): number {
  const match = TEMPERATURE.exec(text.trim());
  const unit = match?.[3]?.[0]?.toUpperCase() ?? bareUnit;
  const degrees = match?.[1] === undefined ? Number.NaN : Number(match[1].replace(",", ".").replace("−", "-"));
  // Centigrade and Celsius share their first letter.
  const celsius = unit === "F" ? celsiusFromFahrenheit(degrees) : degrees;
  if (unit === null || !Number.isFinite(degrees) || celsius < ABSOLUTE_ZERO_C) {
    throw new BadInput({
      code: "not-a-temperature",
      path,
      found: text.trim() === "" ? "nothing" : `"${text.trim()}"`,
      expected: "a temperature with its unit, such as 1222 °C or 2232 °F",
    });
  }
  return celsius;
}

/** Prints a temperature to the whole degree in her units. */
export function formatTemperature(celsius: number, units: TemperatureUnits): string {
  return `${Math.round(units === "F" ? fahrenheitFromCelsius(celsius) : celsius)} °${units}`;
}

/** Prints a rate of heating or cooling, degrees an hour, in her units. */
export function formatRate(cPerHour: number, units: TemperatureUnits): string {
  return `${Math.round(units === "F" ? (cPerHour * 9) / 5 : cPerHour)} °${units}/h`;
}
