import type { Fault, FaultKind } from "../../../firing/watching/fault.ts";
import { minuteInClimb } from "../../../firing/watching/testing/watched-readings.ts";
import { watchFiring } from "../../../firing/watching/watch-firing.ts";
import { watchedFiring } from "../../firings/watched-firing.ts";
import type { FiringRecord } from "../../records/firing-record.ts";
import type { KeptYear } from "./kept-year.ts";

/** A reading as a watch takes it. */
export interface FedReading {
  readonly minute: number;
  readonly tempC: number;
}

/** How often it is asked how the firing stands. The server asks each minute; that changes nothing but the time it takes. */
const ASKED_EVERY_MIN = 120;

/** A firing's readings, minutes from its start. */
export function fedReadings(year: KeptYear, firing: FiringRecord): FedReading[] {
  const startMs = Date.parse(firing.startedAt ?? "");
  const [series] = year.readings.get(firing.id) ?? [];
  return (series?.readings ?? []).map(({ at, tempC }) => ({ minute: (Date.parse(at) - startMs) / 60_000, tempC }));
}

/**
 * Watches a firing of the year as the server does: the kiln as it was known when the firing was prepared, its readings one
 * by one, its shut-off as she told it, and the clock.
 *
 * @param untilMin the clock after the last reading
 */
export function watchedFaults(
  year: KeptYear,
  firing: FiringRecord,
  readings: readonly FedReading[],
  untilMin = readings.at(-1)?.minute ?? 0,
): readonly Fault[] {
  const calibration = year.calibrations.find(({ id }) => id === firing.foretold?.calibrationId) ?? null;
  const load = year.loads.find(({ id }) => id === firing.loadId) ?? null;
  const watched = watchedFiring({ firing, kiln: year.kiln, load, calibration });
  if (watched === null) throw new Error(`${firing.name} cannot be watched.`);
  const watch = watchFiring(watched.watched, watched.programme, { startMin: 0, cone: watched.cone });
  const offMin = (Date.parse(firing.shutOffAt ?? "") - Date.parse(firing.startedAt ?? "")) / 60_000;
  let [isOff, asked] = [false, 0];
  const clock = (toMin: number): void => {
    for (; asked < toMin; asked += 1) {
      watch.silence(asked);
      if (asked % ASKED_EVERY_MIN === 0) watch.state();
    }
  };
  for (const { minute, tempC } of readings) {
    clock(minute);
    if (!isOff && minute > offMin) {
      watch.shutOff(offMin);
      isOff = true;
    }
    watch.read(minute, tempC);
  }
  clock(untilMin);
  return watch.state().faults;
}

/** A fault put into a feed, and by when it has to be noticed: the times of src/firing/watching/injected-faults.test.ts. */
export interface FedFault {
  readonly name: string;
  readonly kind: FaultKind;
  /** Minutes after it began. */
  readonly withinMin: number;
  /** What becomes of a reading so many minutes after it began; null where it does not come. */
  readonly of: (reading: FedReading, sinceMin: number, lastC: number) => FedReading | null;
}

const until = (reading: FedReading, sinceMin: number, lastsMin: number, tempC: number): FedReading =>
  sinceMin <= lastsMin ? { ...reading, tempC } : reading;

export const FED_FAULTS: readonly FedFault[] = [
  { name: "silence", kind: "silence", withinMin: 10, of: (each, since) => (since < 30 ? null : each) },
  { name: "a jump up", kind: "jump", withinMin: 1, of: (each, since) => until(each, since, 2, each.tempC + 90) },
  { name: "a jump down", kind: "jump", withinMin: 3, of: (each, since) => until(each, since, 2, each.tempC - 90) },
  {
    ...{ name: "a slipped probe", kind: "slipped probe", withinMin: 6 },
    of: (each, since) => (since > 120 ? null : { ...each, tempC: 20 + 0.88 * (each.tempC - 20) }),
  },
  {
    ...{ name: "a probe that keeps its value", kind: "dead probe", withinMin: 15 },
    of: (each, since, lastC) => (since > 40 ? null : { ...each, tempC: lastC }),
  },
  {
    ...{ name: "an open probe", kind: "dead probe", withinMin: 2 },
    of: (each, since) => (since > 40 ? null : { ...each, tempC: 1800 }),
  },
  {
    // Twenty minutes for most; at the 60 °C/h of a glaze's last ramp 15 °C behind are a quarter of an hour by themselves,
    // and a scatter of 3 °C hides three minutes more.
    ...{ name: "a climb that ends", kind: "stalling", withinMin: 23 },
    of: (each, since, lastC) =>
      since > 60 ? null : { ...each, tempC: lastC + (5 * since) / 60 + ((each.minute * 7.3) % 5) - 2 },
  },
  {
    // Five degrees a minute over its climb: 31 °C past after 6.2 minutes, and three more.
    ...{ name: "a relay that does not open", kind: "overshoot", withinMin: 9.2 },
    of: (each, since) => (since > 40 ? null : { ...each, tempC: each.tempC + 5 * since }),
  },
];

/** Readings with a fault from a minute on a climb above red heat; null where the firing has no such climb. */
export function withFault(
  firing: FiringRecord,
  readings: readonly FedReading[],
  fault: FedFault,
): { readonly at: number; readonly readings: FedReading[] } | null {
  const at = minuteInClimb(firing.programme?.segments ?? [], readings);
  if (at === null) return null;
  const lastC = readings.findLast((each) => each.minute <= at)?.tempC ?? 0;
  const fed = readings.flatMap((each) => {
    const changed = each.minute > at ? fault.of(each, each.minute - at, lastC) : each;
    return changed === null ? [] : [changed];
  });
  return { at, readings: fed };
}
