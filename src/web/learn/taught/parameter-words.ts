import type { ParameterName } from "../../../firing/calibration/parameters.ts";
import type { TemperatureUnits } from "../../../measures/temperature.ts";

/** One thing a calibration tells of, as a potter speaks of it. */
interface Told {
  readonly name: string;
  /** What it is when it is more, and less, than the kiln was described with. */
  readonly more: string;
  readonly less: string;
  /** What is the same as described. */
  readonly same: string;
}

const TOLD: Readonly<Record<ParameterName, Told>> = {
  wallFactor: {
    name: "Walls",
    more: "let through # more heat than described",
    less: "let through # less heat than described",
    same: "hold heat as described",
  },
  wareMassFactor: {
    name: "Ware of that load",
    more: "was # heavier than reckoned",
    less: "was # lighter than reckoned",
    same: "weighed what was reckoned",
  },
  powerFactor: {
    name: "Elements",
    more: "give # more power than described",
    less: "give # less power than described",
    same: "give the power described",
  },
  leakFactor: {
    name: "Vent and cracks",
    more: "leak # more heat than described",
    less: "leak # less heat than described",
    same: "leak as described",
  },
  openFactor: {
    name: "Way past the shelves",
    more: "is # more open than drawn",
    less: "is # closer than drawn",
    same: "is as open as drawn",
  },
  probeOffsetC: { name: "Probe", more: "reads # too high", less: "reads # too low", same: "reads true" },
  tilt: {
    name: "Top and bottom",
    more: "the top gets # more power, the bottom as much less",
    less: "the bottom gets # more power, the top as much less",
    same: "get the power described",
  },
  middleShare: {
    name: "Middle and ends",
    more: "the middle gets # more power, the ends half as much less",
    less: "the middle gets # less power, the ends half as much more",
    same: "get the power described",
  },
};

export const parameterName = (name: ParameterName): string => TOLD[name].name;

/** A value as how far it is from what was described: a share of it, or degrees Celsius. */
export function away(name: ParameterName, value: number): number {
  return isFactor(name) ? value - 1 : value;
}

/** The place two times in three, from least to most, as shares away from what was described, or °C. */
export function likelySpan(name: ParameterName, value: number, sigma: number): readonly [least: number, most: number] {
  if (!isFactor(name)) return [value - sigma, value + sigma];
  return [value * Math.exp(-sigma) - 1, value * Math.exp(sigma) - 1];
}

/**
 * What a value means: "Elements give 6 % less power than described". Where its spread reaches over nothing at all it
 * is told as what was described, for no more is known.
 */
export function parameterWords(name: ParameterName, value: number, sigma: number, units: TemperatureUnits): string {
  const told = TOLD[name];
  const by = away(name, value);
  const [least, most] = likelySpan(name, value, sigma);
  const isSure = least > 0 || most < 0;
  const amount = amountWords(name, by, units);
  if (!isSure || amount.startsWith("0")) return `${told.name}: ${told.same}, as far as can be told`;
  return `${told.name}: ${(by > 0 ? told.more : told.less).replace("#", amount)}`;
}

/** How sure: "give or take 2 %". */
export function sureWords(name: ParameterName, sigma: number, units: TemperatureUnits): string {
  const percent = Math.max(1, Math.round(100 * (isFactor(name) ? Math.expm1(sigma) : sigma)));
  return `give or take ${name === "probeOffsetC" ? degreeDifference(Math.max(0.5, sigma), units) : `${percent} %`}`;
}

/** A share or difference without its sign: "6 %", "4 °C". */
export function amountWords(name: ParameterName, by: number, units: TemperatureUnits): string {
  return name === "probeOffsetC" ? degreeDifference(by, units) : `${Math.round(100 * Math.abs(by))} %`;
}

/** A difference of temperatures without its sign: "4 °C", "0.5 °C". */
export function degreeDifference(celsius: number, units: TemperatureUnits): string {
  const by = Math.abs(units === "F" ? (celsius * 9) / 5 : celsius);
  const shown = by < 1 && by > 0 ? Math.round(by * 10) / 10 : Math.round(by);
  return `${shown} °${units}`;
}

const isFactor = (name: ParameterName): boolean => name.endsWith("Factor");
