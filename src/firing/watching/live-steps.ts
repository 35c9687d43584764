import type { Mode } from "../calibration/measured-firing.ts";

/** A step that a firing has lived through, up to a moment. */
export interface LiveStep {
  readonly minute: number;
  /** What the probe read there, smoothed. */
  readonly tempC: number;
  readonly mode: Mode;
  /** Nothing was read meanwhile: the way there is a straight line, no evidence. */
  readonly gap: boolean;
}

/** As in a replay (measured-firing.ts): even steps while heating, growing ones once it is off. */
const HEATING_STEP_MIN = 5;
const COOLING_STEPS_MIN = { first: 1, growth: 1.4, most: 10 };
/** Further apart than this, readings leave a gap; it is lived through in steps no longer than the longest. */
const GAP_MIN = 15;
/** A step's end is a straight line through the readings of so long before it. */
const SMOOTHED_OVER_MIN = 5;

/** Gathers readings into steps. A step ends with a reading, so that nothing has to be known of the next one. */
export class LiveSteps {
  private endMin: number;
  private endC: number;
  private mode: Mode = "follow";
  private dueMin = HEATING_STEP_MIN;
  /** The readings of the last while in the present mode. */
  private minutes: number[] = [];
  private tempC: number[] = [];

  constructor(startMin: number, startC: number) {
    this.endMin = startMin;
    this.endC = startC;
  }

  /** The steps that end with this reading or, where the mode changes, with the one before it. */
  read(minute: number, tempC: number, mode: Mode): LiveStep[] {
    const last = this.minutes.at(-1) ?? this.endMin;
    const steps: LiveStep[] = [];
    if (mode !== this.mode) {
      if (last > this.endMin + 1e-6) steps.push(this.close(last));
      this.mode = mode;
      this.dueMin = mode === "off" ? COOLING_STEPS_MIN.first : HEATING_STEP_MIN;
      this.minutes = [];
      this.tempC = [];
    }
    if (minute - last > GAP_MIN) {
      if (last > this.endMin + 1e-6) steps.push(this.close(last));
      this.minutes = [];
      this.tempC = [];
      steps.push(...this.across(minute, tempC));
    }
    this.minutes.push(minute);
    this.tempC.push(tempC);
    if (minute - this.endMin >= this.dueMin - 1e-6) steps.push(this.close(minute));
    return steps;
  }

  private close(minute: number): LiveStep {
    const tempC = this.smoothed(minute);
    this.endMin = minute;
    this.endC = tempC;
    if (this.mode === "off") this.dueMin = Math.min(COOLING_STEPS_MIN.most, this.dueMin * COOLING_STEPS_MIN.growth);
    return { minute, tempC, mode: this.mode, gap: false };
  }

  private across(minute: number, tempC: number): LiveStep[] {
    const [fromMin, fromC] = [this.endMin, this.endC];
    const count = Math.max(1, Math.ceil((minute - fromMin) / COOLING_STEPS_MIN.most));
    this.endMin = minute;
    this.endC = tempC;
    return Array.from({ length: count }, (_, i) => {
      const share = (i + 1) / count;
      const mode: Mode = this.mode === "off" ? "off" : "follow";
      return { minute: fromMin + share * (minute - fromMin), tempC: fromC + share * (tempC - fromC), mode, gap: true };
    });
  }

  /** A straight line through the readings of the last five minutes, where it ends; one or two readings as they are. */
  private smoothed(minute: number): number {
    while (minute - (this.minutes[0] as number) > SMOOTHED_OVER_MIN + 1e-6) {
      this.minutes.shift();
      this.tempC.shift();
    }
    let [n, t, c, tt, tc] = [0, 0, 0, 0, 0];
    this.minutes.forEach((each, i) => {
      const back = each - minute;
      const celsius = this.tempC[i] as number;
      n++;
      t += back;
      c += celsius;
      tt += back * back;
      tc += back * celsius;
    });
    const across = n * tt - t * t;
    return n >= 3 && across > 1e-9 ? (c * tt - t * tc) / across : (this.tempC.at(-1) as number);
  }
}
