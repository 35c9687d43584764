import { type FaultLook, FINE, type Sign, UNTOLD, type WatchedReading } from "../fault.ts";
import { FAULT_THRESHOLDS } from "../fault-thresholds.ts";

const T = FAULT_THRESHOLDS.stalling;
const MESSAGE =
  "The kiln climbs more slowly than its programme asks. Look whether all elements glow alike (through infrared-filtering glasses), at the breaker, the plug and the door switch, and whether the lid lies well. Your kiln's manual and a licensed electrician come first; isolate the kiln before you reach inside.";
const FALLING =
  "The kiln loses heat although its programme asks for more. Look whether it is still on: breaker, door switch, an error on the controller; and whether the probe still sits in its hole. Your kiln's manual and a licensed electrician come first; isolate the kiln before you reach inside.";

/** Below its programme, and hardly climbing, or falling. One that is behind but climbs is late, not stalling. */
export class Stalling implements FaultLook {
  readonly kind = "stalling";
  private keptUpMin: number | null = null;
  private segment = -1;
  private highestC = Number.NEGATIVE_INFINITY;
  private highestMin = 0;
  private lowSinceMin: number | null = null;
  private slowSinceMin: number | null = null;

  look({ minute, tempC, place, recent }: WatchedReading): Sign {
    const { likeliest, possible } = place;
    if (possible.some((each) => each.doing === "over")) {
      this.forget(minute);
      return FINE;
    }
    if (this.segment !== likeliest.segment) {
      this.segment = likeliest.segment;
      this.highestC = tempC;
      this.highestMin = minute;
    }
    const behind = Math.min(...possible.map((each) => (each.wantedC ?? tempC) - tempC));
    if (behind < T.caughtUpC.value) {
      this.keptUpMin = minute;
      this.lowSinceMin = null;
      this.slowSinceMin = null;
      this.highestC = Math.max(this.highestC, tempC);
      this.highestMin = minute;
      return FINE;
    }
    if (tempC >= this.highestC) [this.highestC, this.highestMin] = [tempC, minute];
    if (tempC > this.highestC - T.fallingC.value) this.lowSinceMin = null;
    else this.lowSinceMin ??= minute;
    const since = this.keptUpMin ?? minute;
    const rising = possible.every((each) => each.rising);
    const longEnough = rising ? T.fallingMin.value : T.coolingMin.value;
    if (behind >= T.behindC.value && this.lowSinceMin !== null && minute - this.lowSinceMin >= longEnough) {
      const fallen = `${(this.highestC - tempC).toFixed(0)} °C lower than ${(minute - this.highestMin).toFixed(0)} min ago, `;
      const found = `${tempC.toFixed(0)} °C, ${rising ? fallen : ""}${behind.toFixed(0)} °C below its programme`;
      return { is: "wrong", sinceMin: rising ? this.highestMin : since, found, message: FALLING };
    }
    if (!rising) return UNTOLD;
    const slope = recent.slopeCPerHour(T.overMin.value);
    if (slope === null) return UNTOLD;
    const asked = Math.min(...possible.map((each) => each.askedCPerHour ?? 0));
    const slow = asked > 0 ? asked * T.shareOfAsked.value : T.leastCPerHour.value;
    const slowly = behind >= T.behindC.value && slope < slow && minute - since >= T.overMin.value / 2;
    if (!slowly) this.slowSinceMin = null;
    else this.slowSinceMin ??= minute;
    if (this.slowSinceMin !== null && minute - this.slowSinceMin >= T.staysMin.value - 1e-9) {
      const wanted = asked > 0 ? `${asked.toFixed(0)} °C/h asked` : "as fast as it can asked";
      const found = `${Math.max(0, slope).toFixed(0)} °C/h over ${T.overMin.value} min, ${wanted}, ${behind.toFixed(0)} °C below its programme`;
      return { is: "wrong", sinceMin: since, found, message: MESSAGE };
    }
    return slope > Math.max(asked * T.goesOnShare.value, 2 * T.leastCPerHour.value) ? FINE : UNTOLD;
  }

  private forget(minute: number): void {
    this.keptUpMin = minute;
    this.lowSinceMin = null;
    this.slowSinceMin = null;
    this.segment = -1;
  }
}
