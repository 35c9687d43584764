import type { Curve } from "../heat-work/curve.ts";

/** Readings closer together than this are gathered into their mean: a minute is enough for heat work. */
const GATHERED_MIN = 1;

/** The readings of a firing as a curve, no closer than a minute: what heat work is reckoned from. */
export class LogCurve {
  private readonly minutes: number[] = [];
  private readonly tempC: number[] = [];
  private sum = { minutes: 0, tempC: 0, count: 0 };
  private begunMin = 0;

  add(minute: number, tempC: number): void {
    const { sum } = this;
    if (sum.count > 0 && minute - this.begunMin >= GATHERED_MIN - 1e-9) this.close();
    if (this.sum.count === 0) this.begunMin = minute;
    this.sum.minutes += minute;
    this.sum.tempC += tempC;
    this.sum.count++;
  }

  /** Everything so far; fewer than two points is no curve yet. */
  curve(): Curve {
    const { minutes, tempC, count } = this.sum;
    const rest = count === 0 ? [] : [[minutes / count, tempC / count] as const];
    return {
      minutes: Float64Array.from([...this.minutes, ...rest.map((each) => each[0])]),
      tempC: Float64Array.from([...this.tempC, ...rest.map((each) => each[1])]),
    };
  }

  private close(): void {
    this.minutes.push(this.sum.minutes / this.sum.count);
    this.tempC.push(this.sum.tempC / this.sum.count);
    this.sum = { minutes: 0, tempC: 0, count: 0 };
  }
}
