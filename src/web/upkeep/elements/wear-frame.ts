import type { ElementWear } from "../../../studio/firings/element-wear.ts";

/** What a chart of wear spans, and its line. */
export interface WearFrame {
  readonly lastFiring: number;
  readonly topRise: number;
  /** The trend: the rise after so many firings; level where there is none. */
  readonly riseAt: (firings: number) => number;
}

/** However slow they wear, the chart looks ahead no further than this many times the firings behind. */
const AHEAD = 6;

/** @param now firings since the set was new, or first measured */
export function wearFrame(
  { points, powerLeft, risePerFiring, remainingFirings, limit }: ElementWear,
  now: number,
): WearFrame {
  const rise = powerLeft === null ? 0 : 1 / powerLeft - 1;
  const slope = risePerFiring ?? 0;
  const behind = Math.max(now, 5);
  const ahead = Math.min(remainingFirings?.most ?? remainingFirings?.expected ?? behind, AHEAD * behind);
  const most = points.reduce((so, each) => Math.max(so, each.rise), limit.rise);
  return {
    lastFiring: Math.ceil(now + Math.max(ahead, behind * 0.4)),
    topRise: most * 1.25,
    riseAt: (firings) => rise + slope * (firings - now),
  };
}
