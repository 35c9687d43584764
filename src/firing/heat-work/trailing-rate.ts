import type { Curve } from "./curve.ts";

/** The table's rates hold "over the last 100 °C"; so does ours. */
export const TRAILING_SPAN_C = 100;
/** The published rates, °C/h. Below the first and above the last the correction stays as it is there. */
export const PUBLISHED_RATES = [15, 60, 150] as const;
const [SLOW, MIDDLE, FAST] = PUBLISHED_RATES;

/**
 * For every point of a curve, how fast it came up its last 100 °C: 100 °C divided by the hours since it last stood
 * 100 °C lower. A hold lowers it, cooling too. Where the curve never stood so low, its mean rate so far.
 *
 * @returns °C/h, one a point, above zero
 */
export function trailingRates(curve: Curve): Float64Array {
  const { minutes, tempC } = curve;
  const rates = new Float64Array(tempC.length);
  // Indices of points with no later point as low or lower: temperatures rise along the list.
  const rising = new Int32Array(tempC.length);
  let last = -1;
  // Where the last search ended: on a climb the next one ends close by.
  let below = -1;
  for (let n = 0; n < tempC.length; n++) {
    const celsius = tempC[n] as number;
    const wanted = celsius - TRAILING_SPAN_C;
    while (last >= 0 && (tempC[rising[last] as number] as number) >= celsius) last--;
    rising[++last] = n;
    if (below > last) below = last;
    while (below >= 0 && (tempC[rising[below] as number] as number) > wanted) below--;
    while (below + 1 <= last && (tempC[rising[below + 1] as number] as number) <= wanted) below++;
    rates[n] =
      below < 0 ? meanRate(curve, n) : TRAILING_SPAN_C / hoursSince(minutes, tempC, rising[below] as number, n);
  }
  rates[0] = rates[1] ?? MIDDLE;
  return rates;
}

/** Hours from the crossing of `tempC[n] − 100` just after point `from` until point `n`. */
function hoursSince(minutes: Float64Array, tempC: Float64Array, from: number, n: number): number {
  const low = tempC[from] as number;
  const rise = (tempC[from + 1] as number) - low;
  const share = rise > 0 ? ((tempC[n] as number) - TRAILING_SPAN_C - low) / rise : 0;
  const crossed = (minutes[from] as number) + share * ((minutes[from + 1] as number) - (minutes[from] as number));
  return Math.max(1e-6, ((minutes[n] as number) - crossed) / 60);
}

function meanRate({ minutes, tempC }: Curve, n: number): number {
  const hours = ((minutes[n] as number) - (minutes[0] as number)) / 60;
  return hours > 0 ? Math.max(1e-6, ((tempC[n] as number) - (tempC[0] as number)) / hours) : MIDDLE;
}

/**
 * A rate as its place among the published ones: 0 at 15 °C/h, 1 at 60, 2 at 150, straight in ln(rate) between, and no
 * lower or higher than the ends.
 */
export function ratePlace(cPerHour: number): number {
  if (cPerHour <= SLOW) return 0;
  if (cPerHour >= FAST) return 2;
  return cPerHour < MIDDLE
    ? Math.log(cPerHour / SLOW) / Math.log(MIDDLE / SLOW)
    : 1 + Math.log(cPerHour / MIDDLE) / Math.log(FAST / MIDDLE);
}
