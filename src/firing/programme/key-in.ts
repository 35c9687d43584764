import type { TemperatureUnits } from "../../measures/temperature.ts";
import { fahrenheitFromCelsius } from "../../measures/temperature.ts";
import { peakSegment } from "./ideal-curve.ts";
import type { Programme, Segment } from "./programme.ts";

/** One line to key into a controller, in its own degrees. */
export interface KeyInLine {
  readonly segment: number;
  /** Degrees an hour; null is as fast as the kiln can. */
  readonly rate: number | null;
  readonly target: number;
  readonly holdMin: number;
  readonly stage: string;
  readonly reason: string;
}

/**
 * A programme as whole numbers to key in. Rates are rounded down and the peak up, so that what is keyed in still
 * reaches the cone; other targets to the nearest degree.
 */
export function keyInTable(programme: Programme, units: TemperatureUnits): KeyInLine[] {
  const peak = peakSegment(programme);
  return programme.segments.map(({ rateCPerHour, targetC, holdMin, stage, reason }, i) => {
    const target = units === "F" ? fahrenheitFromCelsius(targetC) : targetC;
    const rate = rateCPerHour === null || units === "C" ? rateCPerHour : (rateCPerHour * 9) / 5;
    return {
      segment: i + 1,
      rate: rate === null ? null : Math.max(1, Math.floor(rate + 1e-9)),
      target: i === peak ? Math.ceil(target - 1e-9) : Math.round(target),
      holdMin: Math.ceil(holdMin),
      stage: stage ?? "",
      reason: reason ?? "",
    };
  });
}

/** The programme that those whole numbers are, in °C: what the kiln will really be told. */
export function programmeKeyedIn(programme: Programme, units: TemperatureUnits): Programme {
  const segments = keyInTable(programme, units).map(
    (line, i): Segment => ({
      ...(programme.segments[i] as Segment),
      rateCPerHour: line.rate === null || units === "C" ? line.rate : (line.rate * 5) / 9,
      targetC: units === "F" ? ((line.target - 32) * 5) / 9 : line.target,
      holdMin: line.holdMin,
    }),
  );
  return { ...programme, segments };
}
