/** The readings of the last while, thinned, oldest first: what slow faults are told by. */
export class RecentReadings {
  readonly minutes: number[] = [];
  readonly tempC: number[] = [];
  private readonly keptMin: number;
  private readonly apartMin: number;

  /** @param keptMin how far back they go; @param apartMin readings closer together than this are left out */
  constructor(keptMin = 60, apartMin = 0.25) {
    this.keptMin = keptMin;
    this.apartMin = apartMin;
  }

  /** False where the reading follows the one before it too closely to be kept. */
  add(minute: number, tempC: number): boolean {
    const last = this.minutes.at(-1);
    if (last !== undefined && minute - last < this.apartMin - 1e-9) return false;
    this.minutes.push(minute);
    this.tempC.push(tempC);
    while (minute - (this.minutes[1] ?? minute) >= this.keptMin) {
      this.minutes.shift();
      this.tempC.shift();
    }
    return true;
  }

  /** Begins anew: what was read before tells nothing of what comes. */
  clear(): void {
    this.minutes.length = 0;
    this.tempC.length = 0;
  }

  /**
   * How fast it rose over the last while, °C an hour, by a straight line through the readings; null where they do not
   * reach so far back or are fewer than four.
   */
  slopeCPerHour(overMin: number): number | null {
    const end = this.minutes.at(-1);
    if (end === undefined || end - (this.minutes[0] as number) < overMin * 0.95) return null;
    let [n, t, c, tt, tc] = [0, 0, 0, 0, 0];
    for (let i = this.minutes.length - 1; i >= 0; i--) {
      const back = (this.minutes[i] as number) - end;
      if (back < -overMin - 1e-9) break;
      n++;
      t += back;
      c += this.tempC[i] as number;
      tt += back * back;
      tc += back * (this.tempC[i] as number);
    }
    const across = n * tt - t * t;
    return n < 4 || across < 1e-9 ? null : (60 * (n * tc - t * c)) / across;
  }

  /** Lowest and highest from a moment on. */
  rangeSince(minute: number): { lowest: number; highest: number } {
    let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = this.minutes.length - 1; i >= 0 && (this.minutes[i] as number) >= minute - 1e-9; i--) {
      lowest = Math.min(lowest, this.tempC[i] as number);
      highest = Math.max(highest, this.tempC[i] as number);
    }
    return { lowest, highest };
  }
}
