import { BadInput } from "../../measures/bad-input.ts";
import { celsiusFromFahrenheit } from "../../measures/temperature.ts";
import { ladderOf } from "../cones/cone.ts";
import { parseCone } from "../cones/parse-cone.ts";
import type { CheckedCone, FiringEvidence, PowerReading } from "./evidence.ts";

const FEWEST_READINGS = 20;
const SHORTEST_HOURS = 2;
/** No kiln of a studio is hotter, °C. */
const HOTTEST_C = 1450;
/** A log that begins hotter hides what the walls already held. */
const HOTTEST_START_C = 150;
const COOLEST_FIRING_C = 400;

/** A log without its dropped readings. */
export interface CleanLog {
  readonly minutes: Float64Array;
  readonly tempC: Float64Array;
}

const refuse = (code: string, path: string, found: string, expected: string): never => {
  throw new BadInput({ code, path, found, expected });
};

/**
 * Makes sure that a log can teach something about a kiln.
 *
 * @throws BadInput for too few readings, times that fall, another unit, a hot start, a firing that was none
 */
export function checkLog(log: FiringEvidence["log"], path: string): CleanLog {
  const kept: [number, number][] = [];
  for (let i = 0; i < log.minutes.length; i++) {
    const minute = log.minutes[i] as number;
    const celsius = log.tempC[i] ?? Number.NaN;
    if (!Number.isFinite(minute) || !Number.isFinite(celsius)) continue;
    const before = kept.at(-1)?.[0] ?? Number.NEGATIVE_INFINITY;
    if (minute < before) refuse("time-falls", `${path}.minutes[${i}]`, `${minute} after ${before}`, "times that rise");
    if (minute > before) kept.push([minute, celsius]);
  }
  if (kept.length < FEWEST_READINGS) {
    const wanted = `at least ${FEWEST_READINGS}, from the start of a firing, best to the end of its cooling`;
    refuse("too-few-readings", path, `${kept.length} reading${kept.length === 1 ? "" : "s"}`, wanted);
  }
  const first = kept[0] as [number, number];
  const hours = ((kept.at(-1) as [number, number])[0] - first[0]) / 60;
  if (hours < SHORTEST_HOURS) {
    refuse("too-short", path, `a log of ${hours.toFixed(1)} h`, `a firing's, ${SHORTEST_HOURS} h or more`);
  }
  const tempC = Float64Array.from(kept, (each) => each[1]);
  checkTemperatures(tempC, path);
  return { minutes: Float64Array.from(kept, (each) => each[0] - first[0]), tempC };
}

function checkTemperatures(tempC: Float64Array, path: string): void {
  const peak = tempC.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY);
  const start = tempC[0] as number;
  if (peak > HOTTEST_C) {
    const asF = celsiusFromFahrenheit(peak);
    const looks = asF <= HOTTEST_C ? `; it looks like °F: ${peak.toFixed(0)} °F is ${asF.toFixed(0)} °C` : "";
    const wanted = `temperatures in °C, up to ${HOTTEST_C}${looks}`;
    refuse("wrong-unit", `${path}.tempC`, `a peak of ${peak.toFixed(0)} °C`, wanted);
  }
  if (peak < COOLEST_FIRING_C) {
    refuse(
      "no-firing",
      `${path}.tempC`,
      `a peak of ${peak.toFixed(0)} °C`,
      `a firing's, ${COOLEST_FIRING_C} °C or more`,
    );
  }
  if (start > HOTTEST_START_C) {
    const wanted = `a log from a cold kiln, below ${HOTTEST_START_C} °C: what the walls already held cannot be known`;
    refuse("starts-hot", `${path}.tempC[0]`, `${start.toFixed(0)} °C at the start`, wanted);
  }
}

/** Checks cones of shelves. @throws BadInput for an unknown cone, a level that is none, a bend that is none */
export function checkCones(evidence: FiringEvidence, levels: number, path: string): CheckedCone[] {
  return (evidence.cones ?? []).map((each, i): CheckedCone => {
    const at = `${path}.cones[${i}]`;
    if (!Number.isInteger(each.level) || each.level < 0 || each.level >= levels) {
      refuse("no-such-level", `${at}.level`, String(each.level), `a level of the load, 0 to ${levels - 1}`);
    }
    if ("ladder" in each) {
      const [lowest, highest] = [ladderOf("022"), ladderOf("14")];
      if (!(each.ladder >= lowest && each.ladder <= highest)) {
        refuse("off-the-ladder", `${at}.ladder`, String(each.ladder), `${lowest} (cone 022) to ${highest} (cone 14)`);
      }
      return each;
    }
    if (!(each.bendDeg >= 0 && each.bendDeg <= 180)) {
      refuse("not-a-bend", `${at}.bendDeg`, String(each.bendDeg), "degrees from upright: 8 as it was set, 90 down");
    }
    return { level: each.level, cone: parseCone(each.cone, `${at}.cone`), bendDeg: each.bendDeg };
  });
}

/** Checks stretches of power, and the meter. @throws BadInput */
export function checkPower(evidence: FiringEvidence, path: string): readonly PowerReading[] {
  const stretches = [
    ...(evidence.power ?? []).map((each, i) => [each, `power[${i}]`] as const),
    ...(evidence.fullPower ?? []).map((each, i) => [each, `fullPower[${i}]`] as const),
  ];
  for (const [{ fromMin, toMin }, name] of stretches) {
    if (!(fromMin >= 0 && toMin > fromMin)) {
      refuse("no-stretch", `${path}.${name}`, `from ${fromMin} to ${toMin} min`, "a stretch that ends after it begins");
    }
  }
  (evidence.power ?? []).forEach((each, i) => {
    if ("shareOn" in each && !(each.shareOn >= 0 && each.shareOn <= 1)) {
      refuse("not-a-share", `${path}.power[${i}].shareOn`, String(each.shareOn), "0 to 1: a half is 0.5, not 50");
    }
    if ("powerW" in each && !(each.powerW >= 0 && each.powerW < 1e5)) {
      refuse("out-of-range", `${path}.power[${i}].powerW`, String(each.powerW), "watts, 0 to 100000");
    }
  });
  if (evidence.kWh !== undefined && !(evidence.kWh > 0 && evidence.kWh < 2000)) {
    refuse("out-of-range", `${path}.kWh`, String(evidence.kWh), "kilowatt-hours of one firing, above 0");
  }
  return evidence.power ?? [];
}
