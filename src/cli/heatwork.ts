import type { HeatWork } from "../firing/heat-work/heat-work.ts";
import { heatWork } from "../firing/heat-work/heat-work.ts";
import type { TemperatureLog } from "../firing/log/log-reading.ts";
import { formatTemperature } from "../measures/temperature.ts";
import { type Command, printJson, printLines } from "./command.ts";
import { LOG_OPTION_HELP, LOG_OPTIONS, readLogFile } from "./log-file.ts";
import { choiceOption } from "./options.ts";

/** `wareboard heatwork`: what a firing's temperature log did to cones. */
export const heatwork: Command = {
  name: "heatwork",
  words: ["LOG.csv"],
  summary: "Reckon the heat work a temperature log shows: which cone is down, and how far toward the next.",
  options: {
    ...LOG_OPTIONS,
    units: { type: "string" },
  },
  optionHelp: {
    ...LOG_OPTION_HELP,
    units: "C or F, for what is printed (C)",
  },
  examples: ["wareboard heatwork firing.csv", "wareboard heatwork export.csv --dates day-first --temperature F --json"],
  run: (call) => {
    const { reading, curve, probe } = readLogFile(call.words[0] as string, call);
    const result = heatWork(curve);
    if (call.json) {
      const { dropped, notes } = reading;
      printJson({ ...result, probe, dropped, notes });
    } else {
      printLines(heatWorkText(result, reading, probe, choiceOption(call, "units", ["C", "F"], "C")));
    }
    return 0;
  },
};

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
