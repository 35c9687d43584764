import type { Curve } from "../firing/heat-work/curve.ts";
import type { LogOptions, LogQuestion, TemperatureLog } from "../firing/log/log-reading.ts";
import { probeCurve, readLog } from "../firing/log/read-log.ts";
import { BadInput } from "../measures/bad-input.ts";
import type { CommandCall } from "./command.ts";
import { readTextFile } from "./files.ts";
import { choiceOption, numberOption } from "./options.ts";

/** What a log may leave open, as options of every command that reads one. */
export const LOG_OPTIONS = {
  dates: { type: "string" },
  temperature: { type: "string" },
  time: { type: "string" },
  "missing-hour": { type: "string" },
  probe: { type: "string" },
  firing: { type: "string" },
} as const;

export const LOG_OPTION_HELP = {
  dates: "day-first or month-first, where 3/4 could be either",
  temperature: "C or F, where the log does not say",
  time: "seconds, minutes or hours, where the log does not say",
  "missing-hour": "clock-change or no-readings, where an hour is missing on the clock",
  probe: "the column to read, where there are several",
  firing: "which firing, counted from 1, where the log holds several",
} as const;

/** How each answer of the log importer is given on the command line. */
const ANSWERS: Readonly<Record<keyof LogOptions, string>> = {
  dateOrder: "dates",
  temperature: "temperature",
  timeUnit: "time",
  missingHour: "missing-hour",
  probes: "probe",
  firing: "firing",
};

/** A log that was read: one probe's curve, and what the file was. */
export interface LogFile {
  readonly reading: TemperatureLog;
  readonly curve: Curve;
  readonly probe: string;
}

/** Reads a log by what the call says of it. @throws BadInput where it can be read in more than one way, or is none */
export function readLogFile(path: string, call: CommandCall): LogFile {
  const reading = readWithFile(path, answers(call));
  if (reading.kind === "question") throw asked(path, reading);
  const found = reading.probes.findIndex((probe) => probe.name === call.options.probe);
  const place = Math.max(0, found);
  return { reading, curve: probeCurve(reading, place), probe: reading.probes[place]?.name ?? "" };
}

function readWithFile(path: string, options: LogOptions): TemperatureLog | LogQuestion {
  try {
    return readLog(readTextFile(path), options);
  } catch (error) {
    if (!(error instanceof BadInput) || error.path === path) throw error;
    throw new BadInput({ ...error.toJSON(), file: path });
  }
}

function answers(call: CommandCall): LogOptions {
  const given = call.options;
  return {
    ...(given.dates === undefined
      ? {}
      : { dateOrder: choiceOption(call, "dates", ["day-first", "month-first"], "day-first") }),
    ...(given.temperature === undefined ? {} : { temperature: choiceOption(call, "temperature", ["C", "F"], "C") }),
    ...(given.time === undefined
      ? {}
      : { timeUnit: choiceOption(call, "time", ["seconds", "minutes", "hours"], "minutes") }),
    ...(given["missing-hour"] === undefined
      ? {}
      : { missingHour: choiceOption(call, "missing-hour", ["clock-change", "no-readings"], "clock-change") }),
    ...(typeof given.probe === "string" ? { probes: [given.probe] } : {}),
    ...(given.firing === undefined
      ? {}
      : { firing: numberOption(call, "firing", { least: 1, most: 1000, whole: true, otherwise: 1 }) }),
  };
}

/** A log that can be read in two ways is not guessed at: the answer is asked for, with the option that gives it. */
function asked(path: string, question: LogQuestion): BadInput {
  const option = ANSWERS[question.about];
  const choices = question.choices.map(({ option: answer, means }) => {
    const value = answer[question.about];
    return `--${option} ${Array.isArray(value) ? value.map((each) => JSON.stringify(each)).join(" ") : String(value)} (${means})`;
  });
  return new BadInput({
    code: "question",
    file: path,
    path: "",
    found: `a log that can be read in more than one way (${question.question})`,
    expected: choices.join(", or "),
  });
}
