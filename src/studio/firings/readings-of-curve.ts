import type { Curve } from "../../firing/heat-work/curve.ts";
import type { Chance } from "../../measures/seeded-chance.ts";
import type { Reading } from "../records/reading.ts";

const MINUTE_MS = 60_000;

/**
 * A curve as a probe would tell it: for demos and for trying things out, never for a real kiln's records.
 *
 * @param curve minutes from the start and °C, times rising
 * @param startedAt ISO 8601 in UTC
 * @param options how often it is read; the thermometer's own scatter, °C one way, and the chance it comes from
 * @returns readings rounded to a tenth of a degree, as loggers send them
 */
export function readingsOfCurve(
  curve: Curve,
  startedAt: string,
  options: { readonly everyMin: number; readonly scatterC?: number; readonly chance?: Chance },
): Reading[] {
  const { minutes, tempC } = curve;
  const { everyMin, scatterC = 0, chance } = options;
  const startMs = Date.parse(startedAt);
  const last = minutes[minutes.length - 1] ?? 0;
  const readings: Reading[] = [];
  let after = 1;
  for (let minute = 0; minute <= last; minute += everyMin) {
    while (after < minutes.length - 1 && (minutes[after] as number) < minute) after++;
    const [m0, m1] = [minutes[after - 1] as number, minutes[after] as number];
    const [c0, c1] = [tempC[after - 1] as number, tempC[after] as number];
    const share = m1 > m0 ? Math.min(1, Math.max(0, (minute - m0) / (m1 - m0))) : 1;
    const scatter = chance === undefined ? 0 : (2 * chance.next() - 1) * scatterC;
    const celsius = Math.round((c0 + share * (c1 - c0) + scatter) * 10) / 10;
    readings.push({ at: new Date(startMs + Math.round(minute * MINUTE_MS)).toISOString(), tempC: celsius });
  }
  return readings;
}
