import { COOL_STEPS } from "../../../firing/prediction/cool-steps.ts";
import type { LevelPrediction, Prediction } from "../../../firing/prediction/predict.ts";
import { programmeTimes } from "../../../firing/programme/ideal-curve.ts";
import type { Programme } from "../../../firing/programme/programme.ts";
import type { TemperatureUnits } from "../../../measures/temperature.ts";
import type { ForetoldRecord } from "../../../studio/records/firing-parts.ts";
import { type ChartMark, type ChartSeries, heatWorkSeries } from "../chart/chart-series.ts";
import { temperatureAt } from "../chart/chart-words.ts";

/** Cones this close to the last that falls are marked; a dozen that fell long before would crowd the chart. */
const LAST_CONES = 4;
/** The whole cooling would dwarf the rest: drawn as far as on the printed sheet. */
const DRAWN_PAST_SHUT_OFF = 1.9;

/** What a level is expected to get: "cone 6 down, 19 % toward 7". */
export function levelCone({ coneDown, next, towardNext }: LevelPrediction): string {
  if (coneDown === null) return "no cone down";
  return next === null
    ? `cone ${coneDown} down`
    : `cone ${coneDown} down, ${Math.round(towardNext * 100)} % toward ${next}`;
}

/** A difference of temperatures, in her degrees: "12 °C hotter". */
export function offsetWords(offsetC: number, units: TemperatureUnits): string {
  const degrees = Math.round(Math.abs(units === "F" ? (offsetC * 9) / 5 : offsetC));
  return degrees === 0 ? "as at the probe" : `${degrees} °${units} ${offsetC > 0 ? "hotter" : "cooler"}`;
}

/** Degrees of heat work between the hottest and the coolest level; null with fewer than two. */
export function apartC({ levels }: Pick<Prediction, "levels">): number | null {
  if (levels.length < 2) return null;
  const offsets = levels.map(({ offsetC }) => offsetC);
  return Math.max(...offsets) - Math.min(...offsets);
}

/** Differences smaller than this are rounding. */
const SAME_SHARE = 0.005;

/** Whether what a firing keeps is not what is foretold of it now. */
export function isOtherThan(
  kept: Pick<ForetoldRecord, "hours" | "kWh" | "levels">,
  now: Pick<Prediction, "hours" | "kWh" | "levels">,
): boolean {
  const differs = (a: number, b: number): boolean => Math.abs(a - b) > SAME_SHARE * Math.max(a, b);
  return kept.levels.length !== now.levels.length || differs(kept.hours, now.hours) || differs(kept.kWh, now.kWh);
}

export interface ExpectedChart {
  readonly series: readonly ChartSeries[];
  readonly marks: readonly ChartMark[];
  /** The marks, and what lies beyond the chart's right edge. */
  readonly tableMarks: readonly ChartMark[];
  readonly untilMin: number;
}

/** The programme, what the kiln makes of it by level, and the heat work at the probe, ready to be drawn. */
export function expectedChart(programme: Programme, { firing, probe, hours, coolHours }: Prediction): ExpectedChart {
  const untilMin = Math.min(firing.minutes.at(-1) ?? 60, firing.shutOffMin * DRAWN_PAST_SHUT_OFF);
  const foretold: ChartSeries = { name: "foretold", look: "foretold", minutes: firing.minutes, tempC: firing.probeC };
  const levels = firing.levelC.map(
    (tempC, level): ChartSeries => ({ name: `level ${level + 1}`, look: "level", minutes: firing.minutes, tempC }),
  );
  const ideal = programmeTimes(programme);
  const cones = probe.cones
    .filter(({ cone, downAtMin }) => downAtMin !== null && !cone.endsWith(".5"))
    .slice(-LAST_CONES)
    .map(({ cone, downAtMin }): ChartMark => {
      const atMin = downAtMin as number;
      return {
        what: `cone ${cone} down`,
        short: cone,
        kind: "cone",
        atMin,
        tempC: temperatureAt(foretold, atMin) ?? 0,
      };
    });
  const shutOff: ChartMark = { what: "shuts off", kind: "moment", atMin: firing.shutOffMin };
  const cool = COOL_STEPS.flatMap(({ tempC, means }): ChartMark[] => {
    const after = coolHours[String(tempC)] ?? null;
    return after === null ? [] : [{ what: means.replace(/\.$/, ""), atMin: (hours + after) * 60 }];
  });
  return {
    series: [
      ...levels,
      { name: "programme", look: "programme", ...upToEnd(ideal.curve, ideal.segmentEndMin.at(-1) ?? 0) },
      foretold,
      heatWorkSeries(probe, "heat work at the probe", untilMin),
    ],
    marks: [...cones, shutOff],
    tableMarks: [...cones, shutOff, ...cool],
    untilMin,
  };
}

/** A programme says nothing of the cooling after its last segment. */
function upToEnd({ minutes, tempC }: Pick<ChartSeries, "minutes" | "tempC">, endMin: number) {
  const shown = Array.from(minutes).findIndex((minute) => minute > endMin + 1e-6);
  const length = shown < 0 ? minutes.length : shown;
  return { minutes: Array.from(minutes).slice(0, length), tempC: Array.from(tempC).slice(0, length) };
}
