import type { Programme } from "../programme/programme.ts";
import type { FiringEvidence } from "./evidence.ts";

export interface Stretch {
  readonly fromMin: number;
  readonly toMin: number;
}

/** Further behind its programme than this, a controller gives all the kiln has; twice what a log usually errs by. */
const BEHIND_C = 8;
const ON_TIME_C = 3;
const THERE_C = 0.5;
/** A few readings that are not behind end no stretch. */
const PAUSE_MIN = 10;
const SHORTEST_MIN = 20;

/**
 * Where a log runs behind its programme, or the programme asks for all there is: the elements were on all the time.
 * Taken to wait at the end of a ramp until the kiln is there, as `fire` does and most controllers do (common practice,
 * no source). A stretch begins where the log last kept up, and lasts 20 minutes or more.
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
    if (!rising || wanted - celsius <= ON_TIME_C) keptUpMin = minute;
    // Once it gives all it has, it goes on until the kiln has caught up.
    const last = found.at(-1);
    const going = last !== undefined && minute - last.toMin <= PAUSE_MIN;
    if (rising && thereMin === null && wanted - celsius > (going ? ON_TIME_C : BEHIND_C)) {
      if (going) last.toMin = minute;
      else found.push({ fromMin: Math.max(keptUpMin, begunMin), toMin: minute });
    }
    // On time within what a log errs by; a kiln that was waited for comes all the way.
    const rampEndMin = rate === null ? minute : begunMin + (Math.abs(targetC - from) / rate) * 60;
    const beforeMin = i > 0 ? (minutes[i - 1] as number) : 0;
    const short = rising ? targetC - celsius : celsius - targetC;
    if (thereMin === null && over && short <= (beforeMin <= rampEndMin ? ON_TIME_C : THERE_C)) {
      // Between two readings, the ramp's own end is nearer the moment than the later reading.
      thereMin = Math.max(rampEndMin, beforeMin);
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
