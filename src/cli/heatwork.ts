import type { HeatWork } from "../firing/heat-work/heat-work.ts";
import { heatWork } from "../firing/heat-work/heat-work.ts";
import type { LogOptions, LogQuestion, TemperatureLog } from "../firing/log/log-reading.ts";
import { probeCurve, readLog } from "../firing/log/read-log.ts";
import { BadInput } from "../measures/bad-input.ts";
import { formatTemperature } from "../measures/temperature.ts";
import { type Command, type CommandCall, printJson, printLines } from "./command.ts";
import { readTextFile } from "./files.ts";
import { choiceOption, numberOption } from "./options.ts";

/** How each answer of the log importer is given on the command line. */
const ANSWERS: Readonly<Record<keyof LogOptions, string>> = {
  dateOrder: "dates",
  temperature: "temperature",
  timeUnit: "time",
  missingHour: "missing-hour",
  probes: "probe",
  firing: "firing",
};

/** `wareboard heatwork`: what a firing's temperature log did to cones. */
export const heatwork: Command = {
  name: "heatwork",
  words: ["LOG.csv"],
  summary: "Reckon the heat work a temperature log shows: which cone is down, and how far toward the next.",
  options: {
    dates: { type: "string" },
    temperature: { type: "string" },
    time: { type: "string" },
    "missing-hour": { type: "string" },
    probe: { type: "string" },
    firing: { type: "string" },
    units: { type: "string" },
  },
  optionHelp: {
    dates: "day-first or month-first, where 3/4 could be either",
    temperature: "C or F, where the log does not say",
    time: "seconds, minutes or hours, where the log does not say",
    "missing-hour": "clock-change or no-readings, where an hour is missing on the clock",
    probe: "the column to read, where there are several",
    firing: "which firing, counted from 1, where the log holds several",
    units: "C or F, for what is printed (C)",
  },
  examples: ["wareboard heatwork firing.csv", "wareboard heatwork export.csv --dates day-first --temperature F --json"],
  run: (call) => {
    const path = call.words[0] as string;
    const reading = readWithFile(path, answers(call));
    if (reading.kind === "question") throw asked(path, reading);
    const wanted = call.options.probe;
    const found = reading.probes.findIndex((probe) => probe.name === wanted);
    const place = Math.max(0, found);
    const result = heatWork(probeCurve(reading, place));
    const probe = reading.probes[place]?.name ?? "";
    if (call.json) {
      const { dropped, notes } = reading;
      printJson({ ...result, probe, dropped, notes });
    } else {
      printLines(heatWorkText(result, reading, probe, choiceOption(call, "units", ["C", "F"], "C")));
    }
    return 0;
  },
};

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

function heatWorkText(found: HeatWork, log: TemperatureLog, probe: string, units: "C" | "F"): string[] {
  const toward =
    found.next === null ? "" : `, ${Math.round(found.towardNext * 100)} % of the way to cone ${found.next}`;
  const near = found.cones.filter((each) => each.work > 0.05 && each.work < 20 && !each.cone.endsWith(".5"));
  return [
    found.coneDown === null ? "No cone is down." : `Cone ${found.coneDown} is down${toward}.`,
    `  peak ${formatTemperature(found.peakC, units)} at ${probe}; as much as a steady climb of 60 °C an hour to ${formatTemperature(found.equivalentC, units)}`,
    "",
    ...near.map((each) => {
      const when = each.downAtMin === null ? "" : `, down after ${hoursText(each.downAtMin)}`;
      return `  cone ${each.cone.padEnd(4)} work ${each.work.toFixed(2)}, bent ${Math.round(each.bendDeg)}°${when}`;
    }),
    ...(log.dropped.length ? ["", `  Left out: ${log.dropped.length} readings`] : []),
    ...log.dropped.slice(0, 8).map((each) => `    line ${each.line}: ${each.found || "nothing"}: ${each.why}`),
    ...(log.dropped.length > 8 ? [`    and ${log.dropped.length - 8} more (--json lists all)`] : []),
    ...(log.notes.length ? ["", ...log.notes.map((note) => `  Note: ${note}`)] : []),
    ...(found.warnings.length ? ["", ...found.warnings.map((each) => `  Careful: ${each.message}`)] : []),
  ];
}

const hoursText = (minutes: number): string =>
  `${Math.floor(minutes / 60)} h ${String(Math.round(minutes % 60)).padStart(2, "0")}`;
