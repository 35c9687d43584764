import { formatTemperature, type TemperatureUnits } from "../../../measures/temperature.ts";
import type { ChartMark, ChartSeries } from "./chart-series.ts";

/** "6 h 05 min": minutes as she would say them. */
export function hoursWords(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(Math.abs(whole) / 60), Math.abs(whole) % 60];
  const sign = whole < 0 ? "−" : "";
  if (hours === 0) return `${sign}${rest} min`;
  return `${sign}${hours} h ${String(rest).padStart(2, "0")} min`;
}

/** A line's temperature at a minute, straight between its points; null where it has none there. */
export function temperatureAt({ minutes, tempC }: ChartSeries, at: number): number | null {
  const last = minutes.length - 1;
  if (last < 0 || at < (minutes[0] as number) - 1e-9 || at > (minutes[last] as number) + 1e-9) return null;
  let [low, high] = [0, last];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if ((minutes[middle] as number) <= at) low = middle;
    else high = middle;
  }
  const [fromMin, toMin] = [minutes[low] as number, minutes[high] as number];
  const [fromC, toC] = [tempC[low] as number, tempC[high] as number];
  const share = toMin > fromMin ? (at - fromMin) / (toMin - fromMin) : 1;
  const celsius = fromC + Math.min(1, Math.max(0, share)) * (toC - fromC);
  return Number.isFinite(celsius) ? celsius : null;
}

/** One row of the chart's table: a moment, and what every line shows then. */
export interface MomentRow {
  readonly atMin: number;
  readonly what: string;
  /** One for each series, in words; a dash where it shows nothing. */
  readonly shown: readonly string[];
}

/**
 * The chart in words, for who cannot see it or wants figures: its marks in order of time, and where no mark tells of it
 * the start, the highest of every line, and the end.
 *
 * Heat work has no peak: it only grows.
 */
export function momentRows(
  series: readonly ChartSeries[],
  marks: readonly ChartMark[],
  units: TemperatureUnits,
): MomentRow[] {
  const moments: { atMin: number; what: string }[] = marks.map(({ atMin, what }) => ({ atMin, what }));
  moments.push({ atMin: 0, what: "start" });
  for (const line of series) {
    const peak = peakMinute(line);
    if (peak !== null && line.look !== "heat work" && line.look !== "level")
      moments.push({ atMin: peak, what: `${line.name}: highest` });
  }
  moments.sort((a, b) => a.atMin - b.atMin);
  return moments.map(({ atMin, what }) => ({
    atMin,
    what,
    shown: series.map((line) => {
      const celsius = temperatureAt(line, atMin);
      return celsius === null ? "–" : formatTemperature(celsius, units);
    }),
  }));
}

function peakMinute({ minutes, tempC }: ChartSeries): number | null {
  let [peak, at] = [Number.NEGATIVE_INFINITY, -1];
  for (let i = 0; i < tempC.length; i++) {
    if ((tempC[i] as number) > peak) [peak, at] = [tempC[i] as number, i];
  }
  return at < 0 ? null : (minutes[at] as number);
}
