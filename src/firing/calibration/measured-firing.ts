import { BadInput } from "../../measures/bad-input.ts";
import type { ThermalLoad } from "../thermal/kiln-network.ts";
import { type CleanLog, checkCones, checkLog, checkPower } from "./check-evidence.ts";
import type { CheckedCone, FiringEvidence, PowerReading } from "./evidence.ts";
import { fullPowerStretches } from "./full-power.ts";

/** What the elements do in a step of a replay: hold the probe to the log, give all they have, or nothing. */
export type Mode = "follow" | "full" | "off";

/** A firing on the steps on which it is replayed. Arrays have one place for each end of a step, the first for the start. */
export interface MeasuredFiring {
  readonly load: ThermalLoad;
  readonly minutes: Float64Array;
  /** What the probe read there; NaN after the log's end. */
  readonly tempC: Float64Array;
  /** What the elements did in the step that ends there. */
  readonly modes: readonly Mode[];
  /** Places whose temperature is compared, at least a quarter of an hour apart, and whether each begins a new run. */
  readonly compared: readonly { readonly at: number; readonly first: boolean }[];
  readonly shutOffMin: number;
  readonly power: readonly PowerReading[];
  readonly cones: readonly CheckedCone[];
  readonly kWh: number | null;
}

const HEATING_STEP_MIN = 5;
const COOLING_STEPS_MIN = { first: 1, growth: 1.4, most: 10 };
/** Closer readings share most of the model's error, and hold the thermometer's own besides. */
const COMPARED_EVERY_MIN = 15;
/** Cones still feel this much cooling, whether it was logged or not. */
const FELT_COOLING_MIN = 180;
/** Cooler than this, the room tells more than the kiln. */
const COOLED_C = 60;
const HALF_WINDOW_MIN = 5;
const NEAR_PEAK_C = 3;
const NEARLY_OFF = 0.01;
const NEARLY_OFF_W = 50;
/** Means over less than this are gathered, since the model's error lasts longer. */
const POWER_OVER_MIN = 30;

/** Lays a firing's evidence out for replaying. @throws BadInput where it cannot be used */
export function measuredFiring(evidence: FiringEvidence, usual: ThermalLoad, path: string): MeasuredFiring {
  const log = checkLog(evidence.log, `${path}.log`);
  const load = evidence.load ?? usual;
  const cones = checkCones(evidence, load.levels.length, path);
  const power = gathered(checkPower(evidence, path));
  const shutOffMin = evidence.shutOffMin ?? foundShutOff(log, power);
  const end = log.minutes.at(-1) as number;
  if (!(shutOffMin > 30 && shutOffMin <= end)) {
    throw new BadInput({
      code: "out-of-range",
      path: `${path}.shutOffMin`,
      found: `${shutOffMin} min`,
      expected: `a time within the log, up to ${end.toFixed(0)} min`,
    });
  }
  const heated = log.minutes.findLastIndex((minute) => minute <= shutOffMin) + 1;
  const heating = { minutes: log.minutes.subarray(0, heated), tempC: log.tempC.subarray(0, heated) };
  const behind = evidence.programme ? fullPowerStretches(heating, evidence.programme) : [];
  const full = (evidence.fullPower ?? behind).filter((each) => each.fromMin < shutOffMin);
  const { minutes, modes } = stepsOf(
    shutOffMin,
    Math.max(cooledAt(log, shutOffMin), shutOffMin + FELT_COOLING_MIN),
    full,
  );
  const edges = [0, shutOffMin, end, ...full.flatMap((each) => [each.fromMin, each.toMin])].sort((a, b) => a - b);
  const tempC = minutes.map((minute) => (minute > end ? Number.NaN : smoothed(log, minute, edges)));
  return {
    load,
    minutes,
    tempC,
    modes,
    compared: comparedPlaces(minutes, tempC, modes).filter(({ at }) => nearReading(log, minutes[at] as number)),
    shutOffMin,
    power: power.filter((each) => each.fromMin < shutOffMin),
    cones,
    kWh: evidence.kWh ?? null,
  };
}

/** The last reading within a few degrees of the peak, since a kiln loses that much in a minute once it is off; or the last power read. */
function foundShutOff({ minutes, tempC }: CleanLog, power: readonly PowerReading[]): number {
  const peak = tempC.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY);
  const nearPeak = minutes[tempC.findLastIndex((celsius) => celsius >= peak - NEAR_PEAK_C)] as number;
  const lastOn = power.findLast((each) => ("shareOn" in each ? each.shareOn > NEARLY_OFF : each.powerW > NEARLY_OFF_W));
  return Math.min(minutes.at(-1) as number, Math.max(nearPeak, lastOn?.toMin ?? 0));
}

/** False in a gap of the log: a line drawn across it is no evidence. */
const nearReading = ({ minutes }: CleanLog, minute: number): boolean =>
  minutes.some((each) => Math.abs(each - minute) <= COMPARED_EVERY_MIN);

function cooledAt({ minutes, tempC }: CleanLog, shutOffMin: number): number {
  const cool = minutes.findIndex((minute, i) => minute > shutOffMin && (tempC[i] as number) < COOLED_C);
  return (cool < 0 ? minutes.at(-1) : minutes[cool]) as number;
}

/** Even steps while heating, growing ones once it is off, with an end wherever what the elements do changes. */
export function stepsOf(
  shutOffMin: number,
  endMin: number,
  full: readonly { readonly fromMin: number; readonly toMin: number }[],
): { minutes: Float64Array; modes: Mode[] } {
  const minutes = [0];
  const modes: Mode[] = ["follow"];
  const edges = [
    ...new Set([0, shutOffMin, ...full.flatMap((each) => [each.fromMin, Math.min(each.toMin, shutOffMin)])]),
  ];
  edges.sort((a, b) => a - b);
  for (let e = 1; e < edges.length; e++) {
    const [from, to] = [edges[e - 1] as number, edges[e] as number];
    const middle = (from + to) / 2;
    const mode = full.some((each) => each.fromMin <= middle && middle <= each.toMin) ? "full" : "follow";
    const steps = Math.max(1, Math.ceil((to - from) / HEATING_STEP_MIN));
    for (let s = 1; s <= steps; s++) {
      minutes.push(from + ((to - from) * s) / steps);
      modes.push(mode);
    }
  }
  let step: number = COOLING_STEPS_MIN.first;
  for (
    let at = shutOffMin;
    endMin - at > 1e-6;
    step = Math.min(COOLING_STEPS_MIN.most, step * COOLING_STEPS_MIN.growth)
  ) {
    at = Math.min(endMin, at + step);
    minutes.push(at);
    modes.push("off");
  }
  return { minutes: Float64Array.from(minutes), modes };
}

/** Each run of one mode is a chain of its own: its error starts anew where the replay lets go of the log. */
export function comparedPlaces(minutes: Float64Array, tempC: Float64Array, modes: readonly Mode[]) {
  const places: { at: number; first: boolean }[] = [];
  let last = 0;
  let first = true;
  for (let at = 1; at < minutes.length; at++) {
    if (modes[at] !== modes[at - 1]) {
      first = true;
      last = minutes[at - 1] as number;
    }
    if (Number.isNaN(tempC[at]) || (minutes[at] as number) - last < COMPARED_EVERY_MIN - 1e-6) continue;
    places.push({ at, first });
    first = false;
    last = minutes[at] as number;
  }
  return places;
}

/** The log near a moment by a straight line through its neighbours, none of them beyond a change of the elements. */
function smoothed({ minutes, tempC }: CleanLog, minute: number, edges: readonly number[]): number {
  const low = Math.max(minute - HALF_WINDOW_MIN, edges.findLast((edge) => edge < minute - 1e-6) ?? 0);
  const high = Math.min(
    minute + HALF_WINDOW_MIN,
    edges.find((edge) => edge >= minute - 1e-6) ?? Number.POSITIVE_INFINITY,
  );
  let [n, t, c, tt, tc] = [0, 0, 0, 0, 0];
  let after = minutes.length - 1;
  for (let i = 0; i < minutes.length; i++) {
    const away = (minutes[i] as number) - minute;
    if (away >= 0 && i < after) after = i;
    if ((minutes[i] as number) < low || (minutes[i] as number) > high) continue;
    const degrees = tempC[i] as number;
    n++;
    t += away;
    c += degrees;
    tt += away * away;
    tc += away * degrees;
  }
  const across = n * tt - t * t;
  if (n >= 3 && across > 1e-9) return (c * tt - t * tc) / across;
  const before = Math.max(0, after - 1);
  const span = (minutes[after] as number) - (minutes[before] as number);
  const share = span > 0 ? Math.min(1, Math.max(0, (minute - (minutes[before] as number)) / span)) : 1;
  return (tempC[before] as number) + share * ((tempC[after] as number) - (tempC[before] as number));
}

/** Readings of less than half an hour gathered into means of about that: a controller may write one a minute. */
function gathered(readings: readonly PowerReading[]): PowerReading[] {
  const sorted = [...readings].sort((a, b) => a.fromMin - b.fromMin);
  const means: PowerReading[] = [];
  let group: PowerReading[] = [];
  const value = (each: PowerReading): number => ("shareOn" in each ? each.shareOn : each.powerW);
  const close = (): void => {
    const [first, last] = [group[0], group.at(-1)];
    if (first === undefined || last === undefined) return;
    const length = group.reduce((sum, each) => sum + each.toMin - each.fromMin, 0);
    const mean = group.reduce((sum, each) => sum + value(each) * (each.toMin - each.fromMin), 0) / length;
    const stretch = { fromMin: first.fromMin, toMin: last.toMin };
    means.push("shareOn" in first ? { ...stretch, shareOn: mean } : { ...stretch, powerW: mean });
    group = [];
  };
  for (const reading of sorted) {
    const first = group[0];
    const apart =
      first !== undefined &&
      ("shareOn" in first !== "shareOn" in reading || reading.fromMin - (group.at(-1) as PowerReading).toMin > 1);
    if (apart) close();
    group.push(reading);
    if (reading.toMin - (group[0] as PowerReading).fromMin >= POWER_OVER_MIN) close();
  }
  close();
  return means;
}
