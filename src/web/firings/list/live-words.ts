import { LID_LIFTS_C } from "../../../firing/prediction/cool-steps.ts";
import { formatTemperature, type TemperatureUnits } from "../../../measures/temperature.ts";
import type { FiringWatch } from "../../../studio/api/watch-contract.ts";
import type { FiringRecord } from "../../../studio/records/firing-record.ts";
import { clockWords } from "../words/clock-words.ts";
import { hoursLong } from "../words/figures.ts";

const HOUR_MS = 3_600_000;

/**
 * A firing under way in a line: how long, how hot, when its cone goes down and when it shuts off; once it cools, when
 * the lid may be lifted. By the watch where there is one, else by the clock and what was foretold.
 *
 * @param now the moment it is, where no watch tells it
 */
export function liveWords(
  { state, startedAt, shutOffAt, foretold }: FiringRecord,
  watch: FiringWatch | undefined,
  now: string,
  units: TemperatureUnits,
): string[] {
  if (startedAt === null) return [];
  const at = watch?.now ?? now;
  const hoursSince = (moment: string): string =>
    hoursLong(Math.max(0, (Date.parse(at) - Date.parse(moment)) / HOUR_MS));
  const clock = (minutes: number): string => clockWords(startedAt, minutes);
  const outlook = watch?.outlook;
  const temperature = watch?.latest ? [formatTemperature(watch.latest.tempC, units)] : [];
  if (state === "cooling") {
    const lid = outlook?.cool.find(({ tempC }) => tempC === LID_LIFTS_C)?.when;
    return [
      `Cooling${shutOffAt === undefined ? "" : ` for ${hoursSince(shutOffAt)}`}`,
      ...temperature,
      ...(lid ? [`lid about ${clock(lid.atMin)}`] : []),
    ];
  }
  const shutOffMin = outlook?.shutOff?.atMin ?? (foretold && foretold.hours * 60);
  const cone = outlook?.cone;
  return [
    `Firing for ${hoursSince(startedAt)}`,
    ...temperature,
    ...(cone?.down ? [`cone ${cone.cone} about ${clock(cone.down.atMin)}`] : []),
    ...(shutOffMin === undefined ? [] : [`shuts off about ${clock(shutOffMin)}`]),
  ];
}
