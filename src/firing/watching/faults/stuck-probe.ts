import { type FaultLook, FINE, type Sign, UNTOLD, type WatchedReading } from "../fault.ts";
import { FAULT_THRESHOLDS } from "../fault-thresholds.ts";

const T = FAULT_THRESHOLDS.dead;
export const DEAD_PROBE_MESSAGE =
  "The reading cannot be right: the probe or its wire may be broken, or what sends the readings hangs. A controller that trusts it may heat on without end. Look at the controller's own display, then at the probe's plug and wire; if the kiln glows more than it should, switch it off yourself at the isolator. Your kiln's manual comes first.";

/** The very same value while it should move: the programme climbs or falls, or the kiln is off and hot. */
export class StuckProbe implements FaultLook {
  readonly kind = "dead probe";
  private valueC = Number.NaN;
  private sinceMin = 0;
  private sinceWantedC: number | null = null;
  private movedBeforeC = Number.POSITIVE_INFINITY;
  private count = 0;
  private changes = 0;

  /** True while it has stood still for some minutes, not yet long enough to tell: what it shows tells nothing else either. */
  mayBeDead(minute: number): boolean {
    const stuckMin = minute - this.sinceMin;
    return this.count >= 3 && stuckMin >= T.stuckMin.value / 3 && stuckMin < T.stuckMin.value;
  }

  look({ minute, tempC, place, recent }: WatchedReading): Sign {
    const { wantedC } = place.likeliest;
    if (tempC !== this.valueC) {
      this.changes++;
      this.valueC = tempC;
      this.sinceMin = minute;
      this.sinceWantedC = wantedC;
      this.count = 1;
      this.movedBeforeC = movedBefore(recent, minute);
      return this.changes > 1 ? FINE : UNTOLD;
    }
    this.changes = 0;
    this.count++;
    const stuckMin = minute - Math.max(this.sinceMin, place.likeliest.overMin ?? this.sinceMin);
    if (stuckMin < T.stuckMin.value - 1e-9 || this.count < 3) return UNTOLD;
    const off = wantedC === null;
    const shouldMoveC = off || this.sinceWantedC === null ? 0 : Math.abs(wantedC - this.sinceWantedC);
    const should = off
      ? tempC > T.hotC.value && stuckMin >= T.stuckOffMin.value
      : shouldMoveC >= T.shouldMoveC.value &&
        place.possible.every((each) => each.behindC >= T.shouldMoveC.value / 2) &&
        this.movedBeforeC >= T.movedShare.value * shouldMoveC;
    if (!should) return UNTOLD;
    const found = off
      ? `${tempC} °C for ${stuckMin.toFixed(0)} min although the kiln is off`
      : `${tempC} °C for ${stuckMin.toFixed(0)} min while ${shouldMoveC.toFixed(0)} °C of change was asked for`;
    return { is: "wrong", sinceMin: this.sinceMin, found, message: DEAD_PROBE_MESSAGE };
  }
}

/** How far the readings moved in as long a time before: without any, it may have been stuck from the start. */
function movedBefore(recent: WatchedReading["recent"], minute: number): number {
  const from = minute - T.stuckMin.value;
  if (recent.minutes.length < 3 || (recent.minutes[0] as number) > from) return Number.POSITIVE_INFINITY;
  const { lowest, highest } = recent.rangeSince(from);
  return highest - lowest;
}
