import type { LogOptions, LogProbe, TemperatureLog } from "../../firing/log/log-reading.ts";
import { readLog } from "../../firing/log/read-log.ts";
import type { LogAnswers, LogFile, LogLook } from "../../studio/api/readings-contract.ts";
import { checkMoment } from "../../studio/records/fields.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Reading } from "../../studio/records/reading.ts";

/** What of a log file would be kept. */
export interface LogSeries {
  readonly probe: string;
  readonly readings: readonly Reading[];
}
type Question = Extract<LogLook, { kind: "question" }>;

/**
 * Looks at a log of a firing that is over. What the file leaves open is asked, never guessed.
 *
 * @param probes the kiln's, by name: a log of one column is of the first
 * @returns what there is to see, and the readings where no question is left
 * @throws BadInput where the file is no temperature log
 */
export function lookAtLog(
  { csv, options = {} }: LogFile,
  firing: FiringRecord,
  probes: readonly string[],
): { readonly look: LogLook; readonly series: readonly LogSeries[] } {
  const { startsAt, ...answered } = options;
  const log = readLog(csv, answered as LogOptions);
  if (log.kind === "question") {
    const choices = log.choices.map(({ option, means }) => ({ options: { ...options, ...option }, means }));
    return { look: { kind: "question", about: log.about, question: log.question, choices }, series: [] };
  }
  const begin = startOf(log, startsAt);
  if (begin === null) return { look: whenAsked(log, firing, options), series: [] };
  const found = log.probes.map((probe, i) => ({
    column: probe.name,
    probe: probeName(log, i, probes),
    readings: readingsOf(log, probe, Date.parse(begin)),
  }));
  const moments = found.flatMap(({ readings }) => [readings[0]?.at ?? [], readings.at(-1)?.at ?? []].flat()).sort();
  const look: LogLook = {
    kind: "log",
    from: moments[0] ?? begin,
    to: moments.at(-1) ?? begin,
    probes: found.map(({ column, probe, readings }) => ({ column, probe, count: readings.length, ...range(readings) })),
    dropped: log.dropped,
    notes: log.notes,
    kept: false,
  };
  return { look, series: found };
}

/** When the first reading was: as she said, else as the file does where its clock names its offset from UTC. */
function startOf({ startedAt }: TemperatureLog, said: string | undefined): string | null {
  if (said !== undefined) {
    checkMoment(said, "options.startsAt");
    return said;
  }
  if (startedAt === null || !/(Z|[+-]\d{2}:?\d{2})$/i.test(startedAt)) return null;
  return new Date(startedAt).toISOString();
}

function whenAsked({ startedAt }: TemperatureLog, firing: FiringRecord, options: LogAnswers): Question {
  const choices =
    firing.startedAt === null
      ? []
      : [{ options: { ...options, startsAt: firing.startedAt }, means: "When this firing was started" }];
  const question =
    startedAt === null
      ? "When was the first reading? The file does not say."
      : `When was the first reading? The file says ${startedAt.replace("T", " ")}, and not by which clock.`;
  return { kind: "question", about: "startsAt", question, choices };
}

function probeName({ probes: columns }: TemperatureLog, i: number, probes: readonly string[]): string {
  const column = (columns[i] as LogProbe).name;
  return columns.length === 1 && !probes.includes(column) ? (probes[0] ?? column) : column;
}

function readingsOf({ minutes }: TemperatureLog, { tempC }: LogProbe, beginMs: number): Reading[] {
  return Array.from(tempC).flatMap((temperature, i) => {
    if (!Number.isFinite(temperature)) return [];
    return [{ at: new Date(beginMs + Math.round((minutes[i] as number) * 60_000)).toISOString(), tempC: temperature }];
  });
}

function range(readings: readonly Reading[]): { leastC: number; mostC: number } {
  let [leastC, mostC] = [Infinity, -Infinity];
  for (const { tempC } of readings) [leastC, mostC] = [Math.min(leastC, tempC), Math.max(mostC, tempC)];
  return readings.length === 0 ? { leastC: 0, mostC: 0 } : { leastC, mostC };
}
