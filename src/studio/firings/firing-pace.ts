import type { Curve } from "../../firing/heat-work/curve.ts";

/** How fast a firing went through the temperatures that matter to ware, °C/h; null where it was not there or not read. */
export interface FiringPace {
  /** Fastest climb over an hour's stretch of the band. */
  readonly dryingCPerHour: number | null;
  readonly organicsCPerHour: number | null;
  readonly chemicalWaterCPerHour: number | null;
  /** Mean over the last hundred degrees before the peak. */
  readonly lastHundredCPerHour: number | null;
  /** Minutes within 10 °C of the peak. */
  readonly topMin: number;
  /** Mean fall over 600 to 550 °C and 270 to 200 °C: the turns of quartz (573 °C) and cristobalite (226 °C). */
  readonly quartzCPerHour: number | null;
  readonly cristobaliteCPerHour: number | null;
  /** Mean fall from 1000 to 850 °C, where crystals and mattness grow. */
  readonly crystalsCPerHour: number | null;
  readonly peakC: number;
}

/** The bands as the stages of a programme have them (src/firing/programme). */
const DRYING = [80, 130] as const;
const ORGANICS = [250, 900] as const;
const CHEMICAL_WATER = [450, 650] as const;
const NEAR_PEAK_C = 10;
const STRETCH_MIN = 30;

/** @param curve minutes and °C at the probe, heating and cooling, times rising */
export function firingPace({ minutes, tempC }: Curve): FiringPace {
  let top = 0;
  for (let i = 1; i < tempC.length; i++) if ((tempC[i] as number) > (tempC[top] as number)) top = i;
  const peakC = tempC[top] ?? 0;
  const rise = (fromC: number, toC: number): number | null => {
    const from = firstAt(tempC, 0, top, (celsius) => celsius >= fromC);
    const to = firstAt(tempC, from ?? 0, top, (celsius) => celsius >= toC);
    return from === null || to === null ? null : rate(minutes, tempC, from, to);
  };
  const fall = (fromC: number, toC: number): number | null => {
    const last = tempC.length - 1;
    const from = firstAt(tempC, top, last, (celsius) => celsius <= fromC);
    const to = firstAt(tempC, from ?? last, last, (celsius) => celsius <= toC);
    return peakC <= fromC || from === null || to === null ? null : -rate(minutes, tempC, Math.max(top, from - 1), to);
  };
  return {
    dryingCPerHour: fastest(minutes, tempC, top, DRYING),
    organicsCPerHour: fastest(minutes, tempC, top, ORGANICS),
    chemicalWaterCPerHour: fastest(minutes, tempC, top, CHEMICAL_WATER),
    lastHundredCPerHour: rise(peakC - 100, peakC),
    topMin: minutesNear(minutes, tempC, peakC - NEAR_PEAK_C),
    quartzCPerHour: fall(600, 550),
    cristobaliteCPerHour: fall(270, 200),
    crystalsCPerHour: fall(1000, 850),
    peakC,
  };
}

const rate = (minutes: ArrayLike<number>, tempC: ArrayLike<number>, from: number, to: number): number =>
  (((tempC[to] as number) - (tempC[from] as number)) * 60) /
  Math.max(1e-6, (minutes[to] as number) - (minutes[from] as number));

function firstAt(tempC: ArrayLike<number>, from: number, to: number, is: (celsius: number) => boolean): number | null {
  for (let i = from; i <= to; i++) if (is(tempC[i] as number)) return i;
  return null;
}

/** The fastest climb over half an hour that lies in a band; over the whole band where that is shorter. */
function fastest(
  minutes: ArrayLike<number>,
  tempC: ArrayLike<number>,
  top: number,
  [fromC, toC]: readonly [number, number],
): number | null {
  const first = firstAt(tempC, 0, top, (celsius) => celsius >= fromC);
  if (first === null) return null;
  const last = firstAt(tempC, first, top, (celsius) => celsius >= toC) ?? top;
  if (last <= first) return null;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = first, j = first; j <= last; j++) {
    while ((minutes[j] as number) - (minutes[i] as number) > STRETCH_MIN && i < j - 1) i++;
    const isLong = (minutes[j] as number) - (minutes[i] as number) >= STRETCH_MIN * 0.8;
    if (isLong) most = Math.max(most, rate(minutes, tempC, i, j));
  }
  return most === Number.NEGATIVE_INFINITY ? rate(minutes, tempC, first, last) : most;
}

function minutesNear(minutes: ArrayLike<number>, tempC: ArrayLike<number>, aboveC: number): number {
  let sum = 0;
  for (let i = 1; i < minutes.length; i++) {
    if ((tempC[i] as number) >= aboveC && (tempC[i - 1] as number) >= aboveC) {
      sum += (minutes[i] as number) - (minutes[i - 1] as number);
    }
  }
  return sum;
}
