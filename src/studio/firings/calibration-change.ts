import { AT_REST, PARAMETERS, type ParameterName } from "../../firing/calibration/parameters.ts";
import type { CalibrationRecord } from "../records/calibration-record.ts";

/** What a calibration changed of one thing, and how sure it is. */
export interface ParameterChange {
  readonly name: ParameterName;
  /** As a potter reads it: "power of the elements". */
  readonly label: string;
  readonly unit: "" | "°C";
  /** A factor of what the kiln was described with, or what is added to it. */
  readonly before: number;
  readonly after: number;
  /** One standard deviation: of ln(value) for a factor, nearly a share; in its unit for the rest. */
  readonly sigma: number;
  /** By how many of the standard deviations believed before it moved: past 2 it came as a surprise. */
  readonly surprise: number;
  /** "Power of the elements: 4 % less than before, to ± 2 %." */
  readonly text: string;
}

/** The change one calibration made to the one before it; to the kiln as described where there was none. */
export function calibrationChanges(before: CalibrationRecord | null, after: CalibrationRecord): ParameterChange[] {
  return PARAMETERS.map(({ name, label, kind, unit, priorSigma }): ParameterChange => {
    const from = before?.calibration[name] ?? { value: AT_REST[name], sigma: priorSigma };
    const to = after.calibration[name];
    const moved = kind === "factor" ? Math.log(to.value / from.value) : to.value - from.value;
    return {
      ...{ name, label, unit, before: from.value, after: to.value, sigma: to.sigma },
      surprise: from.sigma > 0 ? Math.abs(moved) / from.sigma : 0,
      text: `${label[0]?.toUpperCase()}${label.slice(1)}: ${inWords(kind, unit, moved, to.sigma)}`,
    };
  });
}

function inWords(kind: "factor" | "added", unit: "" | "°C", moved: number, sigma: number): string {
  if (unit === "°C") {
    const by = Math.round(Math.abs(moved) * 10) / 10;
    return `${by === 0 ? "as before" : `${by} °C ${moved > 0 ? "more" : "less"} than before`}, to ± ${sigma.toFixed(1)} °C.`;
  }
  const percent = Math.round(100 * (kind === "factor" ? Math.expm1(Math.abs(moved)) : Math.abs(moved)));
  const change = percent === 0 ? "as before" : `${percent} % ${moved > 0 ? "more" : "less"} than before`;
  return `${change}, to ± ${Math.max(1, Math.round(100 * sigma))} %.`;
}

/** Evidence that would teach most. */
export interface WorthMeasuring {
  readonly kind: string;
  readonly how: string;
  /** By what share it would make the next prediction surer, 0 to 1. */
  readonly surerBy: number;
}

/** Less than this is not worth the trouble. */
const WORTH = 0.03;

/** What to measure next to learn most, best first; empty where another firing like the last would teach as much. */
export const whatToMeasureNext = ({ learned }: Pick<CalibrationRecord, "learned">): readonly WorthMeasuring[] =>
  (learned?.next ?? []).filter(({ surerBy }) => surerBy >= WORTH).sort((a, b) => b.surerBy - a.surerBy);
