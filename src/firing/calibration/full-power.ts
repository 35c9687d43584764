import type { Programme } from "../programme/programme.ts";
import type { FiringEvidence } from "./evidence.ts";

export interface Stretch {
  readonly fromMin: number;
  readonly toMin: number;
}

/** Further behind its programme than this, a controller surely gives all the kiln has: five times what a log errs by. */
const BEHIND_C = 20;
/** A stretch is counted from where the log was this far behind until it is again: within it, never beyond. */
const STILL_BEHIND_C = 8;
/** A few readings that are not behind end no stretch. */
const PAUSE_MIN = 10;
const SHORTEST_MIN = 20;

/**
 * Where a log runs behind its programme, or the programme asks for all there is: the elements were on all the time.
 * Taken to wait at the end of a ramp until the kiln is there, as `fire` does and most controllers do (common practice,
 * no source); looks no further than the first wait. Only short of the truth: a stretch wrongly taken for full power would spoil a
 * calibration, one that is missed costs it a little. Needs the log of the controller's own probe.
 */
export function fullPowerStretches(
  { minutes, tempC }: FiringEvidence["log"],
  programme: Pick<Programme, "segments">,
): Stretch[] {
  const found: { fromMin: number; toMin: number }[] = [];
  let place = 0;
  let from = tempC[0] as number;
  let begunMin = 0;
  let thereMin: number | null = null;
  let keptUpMin = 0;
  let waited = false;
  for (let i = 0; i < minutes.length; i++) {
    const minute = minutes[i] as number;
    const celsius = tempC[i] as number;
    const segment = programme.segments[place];
    if (segment === undefined) break;
    const { rateCPerHour: rate, targetC, holdMin } = segment;
    const rising = targetC >= from;
    const climbed = rate === null ? Math.abs(targetC - from) : (rate * (minute - begunMin)) / 60;
    const over = climbed >= Math.abs(targetC - from);
    const wanted = over ? targetC : from + (rising ? climbed : -climbed);
    if (!rising || wanted - celsius <= STILL_BEHIND_C) keptUpMin = minute;
    // Once it gives all it has, it goes on until the kiln has nearly caught up.
    const last = found.at(-1);
    const going = last !== undefined && minute - last.toMin <= PAUSE_MIN;
    if (rising && thereMin === null && wanted - celsius > (going ? STILL_BEHIND_C : BEHIND_C)) {
      if (going) last.toMin = minute;
      else found.push({ fromMin: Math.max(keptUpMin, begunMin), toMin: minute });
    }
    const short = rising ? targetC - celsius : celsius - targetC;
    if (thereMin === null && over) {
      // A kiln that has to be waited for begins the next ramp at a moment that a log shows too roughly: no further.
      if (rate === null || short > STILL_BEHIND_C) waited = true;
      if (waited && short <= STILL_BEHIND_C) break;
      if (rate !== null && !waited) thereMin = begunMin + (Math.abs(targetC - from) / rate) * 60;
    }
    if (thereMin !== null && minute - thereMin >= holdMin) {
      place++;
      from = targetC;
      begunMin = thereMin + holdMin;
      thereMin = null;
    }
  }
  return found.filter((each) => each.toMin - each.fromMin >= SHORTEST_MIN);
}
