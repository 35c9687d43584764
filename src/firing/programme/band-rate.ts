import type { Curve } from "../heat-work/curve.ts";

/** Shorter stretches than this are the noise of a log, °C. */
const SHORTEST_STRETCH_C = 10;

/**
 * The fastest a curve goes through a stretch of temperature in one direction: the mean rate of its quickest whole
 * 10 °C there, or of the whole stretch where that is shorter.
 *
 * @returns °C/h, above zero, or null where it never crosses the stretch that way
 */
export function fastestThrough(
  { minutes, tempC }: Curve,
  fromC: number,
  toC: number,
  direction: "heating" | "cooling",
): number | null {
  const sign = direction === "heating" ? 1 : -1;
  const [enter, leave] = direction === "heating" ? [fromC, toC] : [-toC, -fromC];
  const span = Math.min(SHORTEST_STRETCH_C, leave - enter);
  let fastest: number | null = null;
  for (let mark = enter; mark + span <= leave + 1e-9; mark += span) {
    const left = lastRise(minutes, tempC, sign, mark, mark + span);
    if (left !== null) fastest = Math.max(fastest ?? 0, (span / Math.max(1e-6, left)) * 60);
  }
  return fastest;
}

/** Minutes of the quickest climb from one temperature to another, signs turned where it cools. */
function lastRise(minutes: Float64Array, tempC: Float64Array, sign: number, low: number, high: number): number | null {
  let leftLowAt: number | null = null;
  let quickest: number | null = null;
  for (let n = 1; n < tempC.length; n++) {
    const [before, now] = [sign * (tempC[n - 1] as number), sign * (tempC[n] as number)];
    if (now <= before) {
      if (now <= low) leftLowAt = null;
      continue;
    }
    const when = (mark: number): number => {
      const share = (mark - before) / (now - before);
      return (minutes[n - 1] as number) + share * ((minutes[n] as number) - (minutes[n - 1] as number));
    };
    if (before <= low && now > low) leftLowAt = when(low);
    if (before < high && now >= high && leftLowAt !== null) {
      const took = when(high) - leftLowAt;
      quickest = quickest === null ? took : Math.min(quickest, took);
    }
  }
  return quickest;
}
