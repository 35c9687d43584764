import { type FaultLook, FINE, type Sign, UNTOLD, type WatchedReading } from "../fault.ts";
import { FAULT_THRESHOLDS } from "../fault-thresholds.ts";
import type { ProgrammePlace } from "../programme-follower.ts";

const T = FAULT_THRESHOLDS.overshoot;
const MESSAGE =
  "The kiln is hotter than its programme asks and may not stop. A kiln that climbs when it should not is dangerous: a relay may have welded. Go to it. If it goes on climbing, switch it off yourself at the isolator or the breaker, not only at the controller, and leave it shut while it cools. Your kiln's manual comes first.";

/** Past what the programme asks for: above a hold or a target, running ahead of a ramp, or climbing once it is over. */
export class Overshoot implements FaultLook {
  readonly kind = "overshoot";
  private pastSinceMin: number | null = null;
  private where = "";
  /** The least that it was past its programme, and the coolest it has been, in this part of it. */
  private leastPastC = Number.POSITIVE_INFINITY;
  private coolestC = Number.POSITIVE_INFINITY;

  look({ minute, tempC, place }: WatchedReading): Sign {
    const { likeliest, possible } = place;
    const where = `${likeliest.segment} ${likeliest.doing === "wait" ? "ramp" : likeliest.doing}`;
    if (where !== this.where) {
      this.where = where;
      this.leastPastC = Number.POSITIVE_INFINITY;
      this.coolestC = tempC;
      this.pastSinceMin = null;
    }
    this.coolestC = Math.min(this.coolestC, tempC);
    const past = Math.min(...possible.map((each) => this.past(each, tempC)));
    this.leastPastC = Math.min(this.leastPastC, past);
    const allowed = this.allowed(likeliest);
    const runsAway = likeliest.doing !== "ramp" || past - Math.max(0, this.leastPastC) >= T.risenC.value;
    if (past <= allowed || !runsAway) {
      this.pastSinceMin = null;
      return past <= allowed * T.endsShare.value ? FINE : UNTOLD;
    }
    this.pastSinceMin ??= minute;
    if (minute - this.pastSinceMin < T.forMin.value - 1e-9) return UNTOLD;
    const found =
      likeliest.wantedC === null
        ? `${tempC.toFixed(0)} °C and rising, ${past.toFixed(0)} °C above the coolest since the programme ended`
        : `${tempC.toFixed(0)} °C where ${likeliest.wantedC.toFixed(0)} °C is asked for`;
    return { is: "wrong", sinceMin: this.pastSinceMin, found, message: MESSAGE };
  }

  /** Where it falls, or is off, a kiln is late, not past: only one that climbs is wrong. */
  private past(place: ProgrammePlace, tempC: number): number {
    if (place.wantedC === null || (!place.rising && place.doing !== "hold")) return tempC - this.coolestC;
    return tempC - place.wantedC;
  }

  private allowed(place: ProgrammePlace): number {
    if (place.doing === "over" || (!place.rising && place.doing !== "hold")) return T.onceOffC.value;
    return place.doing === "ramp" ? T.onRampC.value : T.atHoldC.value;
  }
}
