import type { Finding } from "../fault.ts";
import { FAULT_THRESHOLDS } from "../fault-thresholds.ts";

const T = FAULT_THRESHOLDS.silence;
const MESSAGE =
  "No reading has come. Look whether what sends them is on and in reach of the network, and whether the kiln still runs: its own display tells. Until readings come again Wareboard sees nothing of this kiln.";
/** The usual time between readings is the middle of so many. */
const OF_LAST = 15;

/** No reading for longer than is usual. */
export class Silence {
  private lastMin: number | null = null;
  private off = false;
  private cooled = false;
  private readonly intervals: number[] = [];

  /** A reading came. */
  read(minute: number, tempC: number, off: boolean): void {
    if (this.lastMin !== null && minute - this.lastMin < this.allowedMin()) {
      this.intervals.push(minute - this.lastMin);
      if (this.intervals.length > OF_LAST) this.intervals.shift();
    }
    this.lastMin = minute;
    this.off = off;
    this.cooled = off && tempC <= T.cooledC.value;
  }

  /** What is found at a moment; null where readings came or nothing more is to come. */
  look(nowMin: number): Finding | null {
    if (this.lastMin === null || this.cooled || nowMin - this.lastMin < this.allowedMin() - 1e-9) return null;
    const lasted = nowMin - this.lastMin;
    return { sinceMin: this.lastMin, found: `no reading for ${lasted.toFixed(0)} min`, message: MESSAGE };
  }

  /** When a silence after the last reading is noticed, on the readings' clock. */
  noticedMin(): number {
    return (this.lastMin ?? 0) + this.allowedMin();
  }

  private allowedMin(): number {
    const sorted = [...this.intervals].sort((a, b) => a - b);
    const usual = sorted[sorted.length >> 1] ?? 0;
    return Math.max(this.off ? T.onceOffMin.value : T.afterMin.value, usual * T.timesUsual.value);
  }
}
