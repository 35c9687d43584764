import { BadInput } from "../../measures/bad-input.ts";

/** A temperature over time, straight between its points. */
export interface Curve {
  /** Minutes since the start, never falling. */
  readonly minutes: Float64Array;
  /** °C at each of those minutes. */
  readonly tempC: Float64Array;
}

/** A curve from its corners, [minutes, °C] each. */
export function curveThrough(corners: readonly (readonly [number, number])[]): Curve {
  return {
    minutes: Float64Array.from(corners, (corner) => corner[0]),
    tempC: Float64Array.from(corners, (corner) => corner[1]),
  };
}

/** Hotter than any kiln of a studio; a value above it was meant for another unit. */
const HOTTEST_C = 1800;

/**
 * Makes sure a curve can be integrated.
 *
 * @throws BadInput for fewer than two points, times that fall, or a value that is not a temperature of a kiln in °C
 */
export function checkCurve(curve: Curve): void {
  const { minutes, tempC } = curve;
  const refuse = (code: string, path: string, found: string, expected: string): never => {
    throw new BadInput({ code, path, found, expected });
  };
  if (minutes.length !== tempC.length) {
    refuse("lengths-differ", "tempC", `${tempC.length} temperatures`, `${minutes.length}, one for each minute`);
  }
  if (minutes.length < 2) refuse("too-few", "minutes", `${minutes.length} readings`, "at least two");
  for (let n = 0; n < minutes.length; n++) {
    const minute = minutes[n] as number;
    const celsius = tempC[n] as number;
    if (!Number.isFinite(minute) || (n > 0 && minute < (minutes[n - 1] as number))) {
      refuse("time-falls", `minutes[${n}]`, String(minute), "a time at or after the reading before it");
    }
    if (!(celsius > -273.15 && celsius <= HOTTEST_C)) {
      refuse("not-a-temperature", `tempC[${n}]`, `${celsius} °C`, `a kiln's temperature in °C, up to ${HOTTEST_C}`);
    }
  }
}

/** No step of a refined curve is longer than this in temperature or in time. */
const STEP_C = 5;
const STEP_MIN = 10;

/**
 * The same curve with points added along its straight lines, so that no step is longer than 5 °C or 10 minutes. Over
 * such a step the integral of heat work is exact to about 1e-7 (golden/heat-work). A dense log comes back as it is.
 */
export function refined(curve: Curve): Curve {
  const { minutes, tempC } = curve;
  let length = 1;
  for (let n = 1; n < minutes.length; n++) length += pieces(curve, n);
  if (length === minutes.length) return curve;
  const fine = { minutes: new Float64Array(length), tempC: new Float64Array(length) };
  fine.minutes[0] = minutes[0] as number;
  fine.tempC[0] = tempC[0] as number;
  let at = 0;
  for (let n = 1; n < minutes.length; n++) {
    const count = pieces(curve, n);
    const [fromMin, fromC] = [minutes[n - 1] as number, tempC[n - 1] as number];
    const [toMin, toC] = [minutes[n] as number, tempC[n] as number];
    for (let piece = 1; piece < count; piece++) {
      at++;
      fine.minutes[at] = fromMin + ((toMin - fromMin) * piece) / count;
      fine.tempC[at] = fromC + ((toC - fromC) * piece) / count;
    }
    at++;
    fine.minutes[at] = toMin;
    fine.tempC[at] = toC;
  }
  return fine;
}

function pieces(curve: Curve, n: number): number {
  const climb = Math.abs((curve.tempC[n] as number) - (curve.tempC[n - 1] as number)) / STEP_C;
  const time = ((curve.minutes[n] as number) - (curve.minutes[n - 1] as number)) / STEP_MIN;
  return Math.max(1, Math.ceil(Math.max(climb, time) - 1e-9));
}

/** The hottest temperature of a curve, °C. */
export function peakOf(curve: Curve): number {
  let peak = Number.NEGATIVE_INFINITY;
  for (const celsius of curve.tempC) if (celsius > peak) peak = celsius;
  return peak;
}
