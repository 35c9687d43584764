import type { ShownReadings } from "../../../studio/api/readings-contract.ts";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { ChartSeries } from "../../firings/chart/chart-series.ts";

const MINUTE_MS = 60_000;
/** Readings further apart than this are not joined: what happened between is not known. */
const GAP_MIN = 12;

/** One probe's temperatures, minutes of the firing. */
export interface MeasuredLine {
  readonly probe: string;
  readonly minutes: readonly number[];
  readonly tempC: readonly number[];
}

/** Readings as lines over the firing's minutes. */
export const measuredLines = ({ series }: ShownReadings, startedAt: string): MeasuredLine[] =>
  series.map(({ probe, at, tempC }) => ({
    probe,
    minutes: at.map((moment) => (Date.parse(moment) - Date.parse(startedAt)) / MINUTE_MS),
    tempC,
  }));

/** The lines with the newest reading put on, where it is newer than what was fetched. */
export function withLatest(lines: readonly MeasuredLine[], since: readonly FiringWatch["latest"][], startedAt: string) {
  let all = [...lines];
  for (const latest of since) {
    if (latest === null) continue;
    const minute = (Date.parse(latest.at) - Date.parse(startedAt)) / MINUTE_MS;
    const line = all.find(({ probe }) => probe === latest.probe);
    if (line === undefined) all.push({ probe: latest.probe, minutes: [minute], tempC: [latest.tempC] });
    else if (minute > (line.minutes.at(-1) ?? Number.NEGATIVE_INFINITY)) {
      const longer = { ...line, minutes: [...line.minutes, minute], tempC: [...line.tempC, latest.tempC] };
      all = all.map((each) => (each === line ? longer : each));
    }
  }
  return all;
}

/** As the chart draws them, with a gap where nothing was read for a while. @param usualMin how far apart they usually are */
export const asSeries = (lines: readonly MeasuredLine[], usualMin = 1): ChartSeries[] =>
  lines.map(({ probe, minutes, tempC }) => {
    const gap = Math.max(GAP_MIN, 3 * usualMin);
    const [at, celsius]: [number[], number[]] = [[], []];
    minutes.forEach((minute, i) => {
      const before = minutes[i - 1];
      if (before !== undefined && minute - before > gap) {
        at.push((minute + before) / 2);
        celsius.push(Number.NaN);
      }
      at.push(minute);
      celsius.push(tempC[i] as number);
    });
    return {
      name: lines.length === 1 ? "measured" : `measured, ${probe}`,
      look: "measured",
      minutes: at,
      tempC: celsius,
    };
  });
