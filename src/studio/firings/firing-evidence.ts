import type { FiringEvidence } from "../../firing/calibration/evidence.ts";
import type { Curve } from "../../firing/heat-work/curve.ts";
import { readLoadPlan } from "../../loading/read-load-plan.ts";
import { readLoadRequest } from "../../loading/read-load-request.ts";
import { BadInput } from "../../measures/bad-input.ts";
import { FIRINGS, type FiringRecord } from "../records/firing-record.ts";
import type { LoadRecord } from "../records/load-record.ts";
import type { Reading, ReadingSeries } from "../records/reading.ts";
import { recordPath } from "../records/refusals.ts";
import { thermalLoad } from "../thermal-load.ts";

const MINUTE_MS = 60_000;

/** A firing and everything that was measured of it. */
export interface MeasuredRecords {
  readonly firing: FiringRecord;
  readonly load: LoadRecord;
  readonly readings: readonly ReadingSeries[];
}

/**
 * What a firing has to teach: its temperatures, a reading a minute; its cones, its meter, its programme and load.
 *
 * @param probe the probe the controller goes by, as on the kiln; else the one that was read most
 * @throws BadInput where it was not planned here, or nothing was read of it
 */
export function firingEvidence({ firing, load, readings }: MeasuredRecords, probe?: string): FiringEvidence {
  if (load.plan === null) throw refusal(firing, "a load without a plan", "one whose pieces have places");
  const series = controllingSeries(readings, probe);
  if (series === null) throw refusal(firing, "no temperatures", "readings of it: from a logger, typed in, or a file");
  const request = readLoadRequest(load.request);
  const kind = firing.programme?.kind;
  const log = byTheMinute(series.readings);
  const beginMs = Date.parse(log.beginsAt);
  const kWh = meteredKWh(firing);
  return {
    log,
    ...(firing.shutOffAt === undefined ? {} : { shutOffMin: (Date.parse(firing.shutOffAt) - beginMs) / MINUTE_MS }),
    ...(firing.programme === null ? {} : { programme: { segments: firing.programme.segments } }),
    cones: (firing.cones ?? []).map(({ level, cone, bendDeg }) => ({ level, cone, bendDeg })),
    ...(kWh === null ? {} : { kWh }),
    load: thermalLoad(request, readLoadPlan(load.plan, request), kind === "bisque" || kind === "once-fired"),
  };
}

/** The readings that the controller went by: of the named probe, else the longest. */
export function controllingSeries(readings: readonly ReadingSeries[], probe?: string): ReadingSeries | null {
  const named = readings.find((each) => each.probe === probe && each.readings.length > 0);
  if (named) return named;
  const [longest] = [...readings].sort((a, b) => b.readings.length - a.readings.length);
  return longest && longest.readings.length > 0 ? longest : null;
}

/** What the meter ran during a firing, kWh: its last reading less its first; null where it was read once or never. */
export function meteredKWh({ meterReadings }: Pick<FiringRecord, "meterReadings">): number | null {
  const [first, last] = [meterReadings[0], meterReadings.at(-1)];
  const ran = first && last ? last.kWh - first.kWh : 0;
  return ran > 0 ? ran : null;
}

/** Readings as a log: the mean of each minute, minutes counted from the first. */
export function byTheMinute(readings: readonly Reading[]): Curve & { readonly beginsAt: string } {
  const [first] = readings;
  const beginsAt = first?.at ?? "";
  const minutes: number[] = [];
  const tempC: number[] = [];
  const begin = Date.parse(beginsAt);
  let [current, minuteSum, sum, count] = [Number.NaN, 0, 0, 0];
  const close = () => {
    if (count === 0) return;
    minutes.push(minuteSum / count);
    tempC.push(sum / count);
  };
  for (const reading of readings) {
    const minute = (Date.parse(reading.at) - begin) / MINUTE_MS;
    if (Math.floor(minute) !== current) {
      close();
      [current, minuteSum, sum, count] = [Math.floor(minute), 0, 0, 0];
    }
    minuteSum += minute;
    sum += reading.tempC;
    count += 1;
  }
  close();
  return { beginsAt, minutes: Float64Array.from(minutes), tempC: Float64Array.from(tempC) };
}

const refusal = (firing: FiringRecord, found: string, expected: string): BadInput =>
  new BadInput({ code: "nothing-to-learn", path: recordPath(FIRINGS, firing.id), found, expected });
